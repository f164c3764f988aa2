import { describe, expect, test } from 'vitest';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';

const found = async (host: MemoryHost, ...args: string[]) => {
  const { jobs, diagnostics, episodes } = await findCuts(host, args);
  return {
    names: jobs.map(({ name }) => name),
    episodes: jobs.map(({ episode }) => episode.file),
    manifests: episodes.map(({ file }) => file),
    problems: diagnostics.map(({ code, span }) => `${code} ${span.file}`),
    messages: diagnostics.map((one) => messageOf(one, 'en')),
  };
};

describe('a file', () => {
  test('belongs to the nearest episode above it', async () => {
    const host = memoryHost({
      'episode.yaml': 'title: Outer',
      'inner/episode.yaml': 'title: Inner',
      'inner/cuts/a.cut': '',
      'b.cut': '',
    });
    expect(await found(host, 'inner/cuts/a.cut', './b.cut')).toMatchObject({
      names: ['inner/cuts/a.cut', 'b.cut'],
      episodes: ['inner/episode.yaml', 'episode.yaml'],
    });
  });

  test('finds an episode above the current folder', async () => {
    const host = memoryHost({ '/episode.yaml': 'title: Top', 'a.cut': '' });
    expect(await found(host, 'a.cut')).toMatchObject({ episodes: ['../episode.yaml'] });
  });

  test('has no episode where there is none', async () => {
    expect(await found(memoryHost({ 'a.cut': '' }), 'a.cut')).toMatchObject({
      episodes: [null],
      manifests: [],
    });
  });

  test('that was named twice is done once, whatever it is called', async () => {
    const host = memoryHost({ 'cuts/a.cut': '', 'cuts/b.cut': '' });
    host.links.set('/work/link.cut', 'cuts/a.cut');
    expect(await found(host, 'cuts/a.cut', './cuts/../cuts/a.cut', 'link.cut', 'cuts')).toMatchObject({
      names: ['cuts/a.cut', 'cuts/b.cut'],
    });
  });

  test('that is missing does not stop the others', async () => {
    expect(await found(memoryHost({ 'c012.cut': '' }), 'c12.cut', 'c012.cut')).toMatchObject({
      names: ['c012.cut'],
      problems: ['file-missing c12.cut'],
      messages: ['There is no such file or folder; did you mean `c012.cut`?'],
    });
  });

  test('standard input stands in the current folder', async () => {
    expect(await found(memoryHost({ 'episode.yaml': '' }), '-', '-')).toMatchObject({
      names: ['standard input'],
      episodes: ['episode.yaml'],
    });
  });
});

describe('a folder', () => {
  test('gives its cuts and those of folders in it, by number', async () => {
    const host = memoryHost({
      'f/c10.cut': '',
      'f/c2.cut': '',
      'f/s/c1.cut': '',
      'f/a.txt': '',
      'f/.old/c3.cut': '',
    });
    expect(await found(host, 'f')).toMatchObject({
      names: ['f/c2.cut', 'f/c10.cut', 'f/s/c1.cut'],
      problems: [],
    });
  });

  test('that has a manifest is the episode, in story order', async () => {
    const host = memoryHost({
      'f/episode.yaml': 'cuts: [ b.cut, "a*.cut" ]',
      'f/a1.cut': '',
      'f/a2.cut': '',
      'f/b.cut': '',
      'f/unlisted.cut': '',
    });
    expect(await found(host, 'f/')).toMatchObject({ names: ['f/b.cut', 'f/a1.cut', 'f/a2.cut'] });
  });

  test('with no cut is an error', async () => {
    expect(await found(memoryHost({ 'f/a.txt': '' }), 'f')).toMatchObject({
      names: [],
      problems: ['no-cuts f'],
    });
  });

  test('a link that leads back up is not walked for ever', async () => {
    const host = memoryHost({ 'f/g/a.cut': '' });
    host.links.set('/work/f/g/up', '/work/f');
    expect((await found(host, 'f')).names).toEqual(['f/g/a.cut']);
  });
});

describe('a manifest', () => {
  test('without cuts means all cuts of its folder', async () => {
    const host = memoryHost({ 'e/episode.yaml': '', 'e/x/2.cut': '', 'e/x/10.cut': '', 'e/x/1.cut': '' });
    expect((await found(host, 'e/episode.yaml')).names).toEqual(['e/x/1.cut', 'e/x/2.cut', 'e/x/10.cut']);
  });

  test('may have any name when it is named itself, and then holds for its cuts', async () => {
    const host = memoryHost({ 'episode.yaml': '', 'two.yml': 'cuts: a.cut', 'a.cut': '' });
    expect(await found(host, 'two.yml')).toMatchObject({ names: ['a.cut'], episodes: ['two.yml'] });
  });

  test('lists a cut once, at its first place', async () => {
    const host = memoryHost({
      'episode.yaml': 'cuts: [ c9.cut, "*.cut", c1.cut ]',
      'c1.cut': '',
      'c9.cut': '',
    });
    expect((await found(host, 'episode.yaml')).names).toEqual(['c9.cut', 'c1.cut']);
  });

  test.each([
    ['c?.cut', ['c1.cut']],
    ['*.cut', ['c1.cut', 'c12.cut', 'ア.cut']],
    ['**/*.cut', ['a/c4.cut', 'a/b/c3.cut', 'c1.cut', 'c12.cut', 'ア.cut']],
    ['a/**/c*.cut', ['a/c4.cut', 'a/b/c3.cut']],
    ['./a/./c4.cut', ['a/c4.cut']],
    ['a/../c1.cut', ['c1.cut']],
    ['c1.+t', []],
    ['(c1).cut', []],
    ['*c*1*.cut', ['c1.cut', 'c12.cut']],
    ['c*?.cut', ['c1.cut', 'c12.cut']],
    ['**/**/c3.cut', ['a/b/c3.cut']],
    ['**/b/**/*.cut', ['a/b/c3.cut']],
    ['?.cut', ['ア.cut']],
    ['[c]1*.cut', []],
    ['{c1,c12}*.cut', []],
  ])('the pattern %s', async (pattern, names) => {
    const host = memoryHost({
      'episode.yaml': `cuts: [ "${pattern}" ]`,
      'c1.cut': '',
      'c12.cut': '',
      'ア.cut': '',
      'a/c4.cut': '',
      'a/b/c3.cut': '',
    });
    expect((await found(host, 'episode.yaml')).names.sort()).toEqual([...names].sort());
  });

  test('comes back where stars fit a name, or folders, in countless ways', async () => {
    const stars = `${'*a'.repeat(30)}b.cut`;
    const deep = `${'**/a/'.repeat(12)}b.cut`;
    const host = memoryHost({
      'episode.yaml': `cuts: [ "${stars}", "${deep}" ]`,
      [`${'a'.repeat(40)}.cut`]: '',
      [`${'a/'.repeat(30)}c.cut`]: '',
    });
    expect((await found(host, 'episode.yaml')).problems).toEqual([
      'pattern-empty episode.yaml',
      'pattern-empty episode.yaml',
    ]);
  });

  test('says where a pattern finds nothing, a file is missing, a folder is listed', async () => {
    const text = 'cuts: [ "x*.cut", c01.cut, a ]';
    const host = memoryHost({ 'episode.yaml': text, 'c1.cut': '', 'a/c4.cut': '' });
    const { diagnostics } = await findCuts(host, ['episode.yaml']);
    expect(diagnostics.map(({ code, span }) => [code, text.slice(span.start, span.end)])).toEqual([
      ['pattern-empty', '"x*.cut"'],
      ['file-missing', 'c01.cut'],
      ['file-missing', 'a'],
    ]);
    expect(messageOf(diagnostics[1]!, 'en')).toContain('`c1.cut`');
    expect(messageOf(diagnostics[2]!, 'en')).toContain('`a/*.cut`');
  });

  test.each([
    '../other/*.cut',
    '/other/a.cut',
    'a/../../other/a.cut',
    'C:\\other\\a.cut',
    '..\\other\\a.cut',
  ])('may not lead out of its folder: %s', async (pattern) => {
    const host = memoryHost({
      'e/episode.yaml': `cuts: [ '${pattern}' ]`,
      '/other/a.cut': '',
      'other/a.cut': '',
    });
    expect(await found(host, 'e/episode.yaml')).toMatchObject({
      names: [],
      problems: ['episode-outside e/episode.yaml'],
    });
  });

  test('may not lead out by a link, of a file or of a folder', async () => {
    const host = memoryHost({
      'e/episode.yaml': 'cuts: [ "*.cut", "sub/*.cut" ]',
      'o/a.cut': '',
      'o/b.cut': '',
    });
    host.links.set('/work/e/a.cut', '/work/o/a.cut');
    host.links.set('/work/e/sub', '/work/o');
    expect(await found(host, 'e')).toMatchObject({
      names: [],
      problems: Array(3).fill('episode-outside e/episode.yaml'),
    });
  });

  test('a link that stays inside is fine', async () => {
    const host = memoryHost({ 'e/episode.yaml': 'cuts: [ "*.cut" ]', 'e/store/a.cut': '' });
    host.links.set('/work/e/a.cut', 'store/a.cut');
    expect(await found(host, 'e')).toMatchObject({ names: ['e/a.cut'], problems: [] });
  });

  test('with an empty list says so', async () => {
    expect(await found(memoryHost({ 'episode.yaml': 'cuts: []' }), 'episode.yaml')).toMatchObject({
      problems: ['no-cuts episode.yaml'],
    });
  });
});
