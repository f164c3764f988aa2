import { describe, expect, test } from 'vitest';
import { main } from '../../src/command/main.js';
import { templateTexts } from '../../src/episode/episode-template-texts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { englishIn } from '../japanese-text.js';

async function run(host: MemoryHost, ...argv: string[]): Promise<number> {
  return main(argv, host);
}

const text = (host: MemoryHost, path: string) =>
  Buffer.from(host.files.get(`/work/${path}`)!).toString('utf8');
const names = (host: MemoryHost) => [...host.files.keys()].map((path) => path.replace('/work/', '')).sort();

describe('a new episode', () => {
  test('has a manifest, a house file and a cut, and all of it checks', async () => {
    const host = memoryHost();
    expect(await run(host, 'new', 'episode', 'harbour', '--title', 'Harbour: "Lights" #1')).toBe(0);
    expect(names(host)).toEqual([
      'harbour/.gitattributes',
      'harbour/.gitignore',
      'harbour/cuts/c001.cut',
      'harbour/episode.yaml',
      'harbour/house.cut',
    ]);
    expect(await run(host, 'check', '--strict', 'harbour')).toBe(0);
    expect(host.complaints()).toMatch(
      /wrote harbour\/episode\.yaml.*\nnext: cutwright build harbour\n1 cut checked: nothing wrong/,
    );
    expect(text(host, 'harbour/episode.yaml')).toContain('title: "Harbour: \\"Lights\\" #1"');
  });

  test('every line of its manifest is a key, also those that are commented out', async () => {
    const host = memoryHost();
    await run(host, 'new', 'episode', 'a', '--convention', 'west', '--paper', 'legal');
    const all = text(host, 'a/episode.yaml')
      .split('\n')
      .filter((line) => !line.startsWith('# What'))
      .join('\n')
      .replace(/^# /gm, '')
      .replace('{ "A. Name": [1, 2], "B. Name": [3] }', '{ "A. Name": [1] }');
    host.files.set('/work/a/episode.yaml', Buffer.from(all));
    expect(await run(host, 'check', '--strict', 'a')).toBe(0);
    // The reader of manifests names every key that there is.
    host.files.set('/work/a/episode.yaml', Buffer.from('zzz: 1\n'));
    await run(host, 'check', 'a');
    const keys = /the keys are (.*)/.exec(host.complaints())![1]!.split(', ');
    expect(keys.filter((key) => !new RegExp(`^${key}:`, 'm').test(all))).toEqual([]);
  });

  test('is written in the language of whoever begins it, which its paper has then too', async () => {
    const host = memoryHost();
    host.variables.set('CUTWRIGHT_LANGUAGE', 'ja');
    await run(host, 'new', 'episode', 'a');
    expect(text(host, 'a/cuts/c001.cut')).toContain('cut 1 "最初のカット"');
    expect(text(host, 'a/episode.yaml')).toMatch(/^fps: 24 +# 毎秒コマ数$/m);
    expect(text(host, 'a/episode.yaml')).toMatch(/^labels: ja /m);
    const comments = names(host).flatMap((name) =>
      [...text(host, name).matchAll(/.*# (.*)$/gm)].map(([, comment]) => comment!),
    );
    expect(comments.length).toBeGreaterThan(20);
    const typed =
      'JIS japan west en ja letter legal tabloid kaku2 sequence frame mm in flat-round-flat none half full use house.cut';
    expect(englishIn(comments.join('\n'), typed)).toEqual([]);
    expect(await run(host, 'check', '--strict', 'a')).toBe(0);
    expect(await run(host, 'format', '--check', 'a/house.cut', 'a/cuts/c001.cut')).toBe(0);

    await run(host, 'new', 'episode', 'b', '--labels', 'en');
    expect(text(host, 'b/episode.yaml')).toMatch(/^labels: en +# 用紙の言語/m);
  });

  test('says the same keys in all languages', () => {
    const { en, ja } = templateTexts;
    expect(Object.keys(ja.says)).toEqual(Object.keys(en.says));
  });

  test('writes over nothing: where one file is there, none is written', async () => {
    const host = memoryHost({ 'house.cut': 'phrase a = 1\n' });
    expect(await run(host, 'new', 'episode')).toBe(2);
    expect(names(host)).toEqual(['house.cut']);
    expect(host.complaints()).toContain('`house.cut` is there already; nothing was written');
  });
});
