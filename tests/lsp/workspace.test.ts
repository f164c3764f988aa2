import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { DocumentText } from '../../src/lsp/document-text.js';
import { pathOf, Workspace } from '../../src/lsp/workspace.js';
import { uri } from './opened.js';

const FILES = {
  'episode.yaml': 'title: Ferry\n',
  'house.cut': 'phrase walk = 1--2--\n',
  'c1.cut': 'cut 1\ntime 1+0\nuse "house.cut"\nA: walk..\n',
  'c2.cut': 'cut 2\ntime 1+0\nA: 1..\n',
};

function world(files: Readonly<Record<string, string>> = FILES) {
  const host = memoryHost(files);
  const workspace = new Workspace(host);
  const put = (name: string, text: string) =>
    workspace.put(uri(name), 1, new DocumentText(text, 'utf-16')).map((one) => one.uri);
  const codes = async (name: string) =>
    (await workspace.analysis(uri(name)))!.compiled!.diagnostics.map(({ code }) => code);
  return { host, workspace, put, codes };
}

describe('an open text', () => {
  test('is looked at once, until it changes', async () => {
    const { workspace, put } = world();
    put('c1.cut', FILES['c1.cut']);
    const first = await workspace.analysis(uri('c1.cut'));
    expect(await workspace.analysis(uri('c1.cut'))).toBe(first);
    put('c1.cut', `${FILES['c1.cut']}# more\n`);
    const second = await workspace.analysis(uri('c1.cut'));
    expect(second).not.toBe(first);
    expect(second!.text.raw).toContain('# more');
  });

  test('counts in place of what lies on the disk, for other texts too', async () => {
    const { put, codes } = world();
    put('c1.cut', FILES['c1.cut']);
    expect(await codes('c1.cut')).toEqual([]);
    expect(put('house.cut', 'phrase run = 1-2\n')).toEqual([uri('house.cut'), uri('c1.cut')]);
    expect(await codes('c1.cut')).toContain('unknown-phrase');
  });

  test('concerns only the texts that were made with it', async () => {
    // Outside an episode cuts have nothing to do with each other.
    const { 'episode.yaml': _, ...files } = FILES;
    const { put, codes } = world(files);
    put('c2.cut', FILES['c2.cut']);
    await codes('c2.cut');
    expect(put('house.cut', 'phrase run = 1-2\n')).toEqual([uri('house.cut')]);
  });

  test('has the settings of the manifest, also of one that is being typed', async () => {
    const { workspace, put } = world();
    put('c2.cut', FILES['c2.cut']);
    await workspace.analysis(uri('c2.cut'));
    expect(put('episode.yaml', 'fps: 25\n')).toContain(uri('c2.cut'));
    expect((await workspace.analysis(uri('c2.cut')))!.episode.settings.fps).toBe(25);
  });

  test('that is a manifest is not compiled, and is called as messages call it', async () => {
    const { workspace, put } = world();
    put('episode.yaml', 'fps: fast\n');
    const { compiled, name, episode } = (await workspace.analysis(uri('episode.yaml')))!;
    expect([compiled, name, episode.diagnostics.map(({ code }) => code)]).toEqual([
      null,
      'episode.yaml',
      ['episode-value'],
    ]);
  });

  test('need be no file', async () => {
    const { workspace } = world();
    workspace.put('untitled:Untitled-1', 1, new DocumentText('cut 5\ntime 1+0\nA: 1\n', 'utf-16'));
    const { compiled, name } = (await workspace.analysis('untitled:Untitled-1'))!;
    expect([name, compiled!.diagnostics.map(({ code }) => code)]).toEqual([
      'untitled:Untitled-1',
      ['timeline-short'],
    ]);
  });

  test('that is closed counts no more', async () => {
    const { workspace, put, codes } = world();
    put('c1.cut', FILES['c1.cut']);
    put('house.cut', 'phrase run = 1-2\n');
    await codes('c1.cut');
    expect(workspace.close(uri('house.cut'))!.map((one) => one.uri)).toEqual([uri('c1.cut')]);
    expect(await codes('c1.cut')).toEqual([]);
    expect(workspace.close(uri('house.cut'))).toBeNull();
    expect(await workspace.analysis(uri('house.cut'))).toBeNull();
  });
});

describe('a file on the disk', () => {
  test('that has changed concerns the texts that were made with it', async () => {
    const { host, workspace, put, codes } = world();
    put('c1.cut', FILES['c1.cut']);
    await codes('c1.cut');
    host.files.set('/work/house.cut', Buffer.from('phrase run = 1-2\n'));
    expect(workspace.touched('/work/house.cut').map((one) => one.uri)).toEqual([uri('c1.cut')]);
    expect(await codes('c1.cut')).toContain('unknown-phrase');
  });

  test('that appears concerns the texts for which its folder was listed, and a change there does not', async () => {
    const { host, workspace, put, codes } = world();
    put('c2.cut', 'cut 2\ntime 1+0\nlevel A reuse 7/A\nA: 1..\n');
    expect(await codes('c2.cut')).toContain('reuse-unknown');
    host.files.set('/work/c7.cut', Buffer.from('cut 7\ntime 1+0\nA: 1..\n'));
    expect(workspace.touched('/work/c7.cut')).toEqual([]);
    expect(workspace.appeared('/work/c7.cut').map((one) => one.uri)).toEqual([uri('c2.cut')]);
    expect(await codes('c2.cut')).toEqual([]);
  });
});

describe('names of files', () => {
  test('are told from the folder of the workspace', async () => {
    const { workspace } = world({ 'day/c1.cut': FILES['c2.cut'] });
    workspace.root('/work/day');
    workspace.put(uri('day/c1.cut'), 1, new DocumentText(FILES['c2.cut'], 'utf-16'));
    expect((await workspace.analysis(uri('day/c1.cut')))!.name).toBe('c1.cut');
    expect(workspace.placeOf('c1.cut')).toBe('/work/day/c1.cut');
  });

  test('go to the uri that the editor has for them, links seen through', () => {
    const { host, workspace, put } = world();
    host.links.set('/work/link.cut', 'c1.cut');
    put('link.cut', FILES['c1.cut']);
    expect(workspace.uriOf('/work/c1.cut')).toBe(uri('link.cut'));
    expect(workspace.uriOf('/work/c2 a.cut')).toBe(uri('c2%20a.cut'));
  });

  test('are the paths of file uris only', () => {
    expect(pathOf('file:///work/c1%20a.cut')).toBe('/work/c1 a.cut');
    expect(pathOf('untitled:Untitled-1')).toBeNull();
    expect(pathOf('file://%00%')).toBeNull();
  });
});

test('the names of a file are read once, until it changes', () => {
  const { host, workspace } = world();
  const first = workspace.namesOf('/work/c1.cut', '/work')!;
  expect(first.index.names.map(({ name }) => name)).toEqual(['A', 'walk']);
  expect(first.used.trees.map(({ file }) => file)).toEqual(['house.cut']);
  expect(workspace.namesOf('/work/c1.cut', '/work')).toBe(first);
  host.files.set('/work/c1.cut', Buffer.from('cut 1\nB: 1..\n'));
  workspace.touched('/work/c1.cut');
  expect(workspace.namesOf('/work/c1.cut', '/work')!.index.names.map(({ name }) => name)).toEqual(['B']);
  expect(workspace.namesOf('/work/none.cut', '/work')).toBeNull();
});
