import { expect, test } from 'vitest';
import { DocumentText } from '../../src/lsp/document-text.js';
import { EpisodeCheck } from '../../src/lsp/episode-check.js';
import { opened, uri } from './opened.js';

const BROKEN = 'cut 2\ntime 1+0\nA: 1\n';
const WHOLE = 'cut 2\ntime 1+0\nA: 1..\n';

async function checking(files: Record<string, string>, typed = 'cut 1\ntime 1+0\nA: 1..\n') {
  const { host, workspace, analysis } = await opened(typed, { 'episode.yaml': 'title: Ferry\n', ...files });
  const sent: [string, ...unknown[]][] = [];
  const check = new EpisodeCheck(workspace, host, async (of, found) => {
    sent.push([of.slice(uri('').length), ...found.map(({ code }) => code)]);
  });
  /** Lets time pass until nothing more is due. */
  const rest = async () => {
    for (let i = 0; i < 20; i++) {
      host.passMs(500);
      await new Promise((resolve) => setImmediate(resolve));
    }
    return sent.splice(0);
  };
  return { host, workspace, analysis, check, rest };
}

test('the other texts of the episode, and its manifest, are looked at once nobody types', async () => {
  const { check, analysis, rest } = await checking({
    'episode.yaml': 'titel: Ferry\n',
    'c2.cut': BROKEN,
    'c3.cut': WHOLE.replace('2', '3'),
  });
  check.found(analysis);
  const sent = await rest();
  expect(sent.map(([name]) => name).sort()).toEqual(['c2.cut', 'episode.yaml']);
  expect(sent.find(([name]) => name === 'c2.cut')).toEqual(['c2.cut', 'timeline-short']);
  check.found(analysis);
  expect(await rest()).toEqual([]);
});

test('a text that is mended on the disk has none any more, and one that hangs on it is looked at again', async () => {
  const { host, workspace, check, analysis, rest } = await checking({
    'house.cut': 'phrase walk = 1:12\n',
    'c2.cut': 'cut 2\nuse "house.cut"\ntime 1+0\nA: walk\n',
  });
  check.found(analysis);
  expect(await rest()).toEqual([['c2.cut', 'timeline-short']]);
  host.files.set('/work/house.cut', Buffer.from('phrase walk = 1:24\n'));
  workspace.touched('/work/house.cut');
  check.wait();
  expect(await rest()).toEqual([['c2.cut']]);
});

test('what is opened tells its own, and is looked at again when it is closed', async () => {
  const { workspace, check, analysis, rest } = await checking({ 'c2.cut': BROKEN });
  check.found(analysis);
  await rest();
  workspace.put(uri('c2.cut'), 1, new DocumentText(WHOLE, 'utf-16'));
  await check.opened(uri('c2.cut'), true);
  check.wait();
  expect(await rest()).toEqual([['c2.cut']]);
  workspace.close(uri('c2.cut'));
  check.wait();
  expect(await rest()).toEqual([['c2.cut', 'timeline-short']]);
});

test('a keystroke puts it off, and the end ends it', async () => {
  const { host, check, analysis, rest } = await checking({ 'c2.cut': BROKEN });
  check.found(analysis);
  for (let i = 0; i < 5; i++) {
    host.passMs(300);
    check.wait();
  }
  check.end();
  expect(await rest()).toEqual([]);
});
