import { describe, expect, test } from 'vitest';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findUses, mentions, plainNumber, scan, usesIn } from '../../src/episode/used-files.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';

const EPISODE = '/work/ep';

/** Follows the uses of a file of the world; `root` is the episode's folder. */
function follow(host: MemoryHost, path: string, root: string | null = EPISODE, cache = newEpisodeCache()) {
  const text = Buffer.from(host.files.get(path)!).toString();
  const name = path.replace('/work/', '');
  const { trees, diagnostics, sources } = findUses(host, path, parse(name, text).tree, root, cache);
  return {
    files: trees.map(({ file }) => file),
    problems: diagnostics.map(({ code, span }) => `${code} ${span.file}`),
    messages: diagnostics.map((one) => messageOf(one, 'en')),
    sources: [...sources.keys()],
  };
}

const world = (files: Record<string, string>) =>
  memoryHost(Object.fromEntries(Object.entries(files).map(([name, text]) => [`ep/${name}`, text])));

describe('use', () => {
  test('reads a file of the same folder, and what that uses, those that are used first', () => {
    const host = world({ 'a.cut': 'use "b.cut"\n', 'b.cut': 'use "c.cut"\n', 'c.cut': 'phrase p = 1\n' });
    expect(follow(host, '/work/ep/a.cut')).toMatchObject({ files: ['ep/c.cut', 'ep/b.cut'], problems: [] });
  });

  test('reads a file once, though two others use it', () => {
    const host = world({
      'a.cut': 'use "b.cut"\nuse "c.cut"\n',
      'b.cut': 'use "d.cut"\n',
      'c.cut': 'use "d.cut"\n',
      'd.cut': '',
    });
    expect(follow(host, '/work/ep/a.cut').files).toEqual(['ep/d.cut', 'ep/b.cut', 'ep/c.cut']);
  });

  test('reaches up to the folder of the episode, and below it', () => {
    const host = world({
      'cuts/a.cut': 'use "../house.cut"\nuse "../style/x.cut"\n',
      'house.cut': '',
      'style/x.cut': '',
    });
    expect(follow(host, '/work/ep/cuts/a.cut')).toMatchObject({
      files: ['ep/house.cut', 'ep/style/x.cut'],
      problems: [],
    });
  });

  test('takes a path from the file that says use', () => {
    const host = world({ 'a.cut': 'use "style/b.cut"\n', 'style/b.cut': 'use "c.cut"\n', 'style/c.cut': '' });
    expect(follow(host, '/work/ep/a.cut').files).toEqual(['ep/style/c.cut', 'ep/style/b.cut']);
  });

  test.each(['../b.cut', '../../b.cut', '/work/b.cut', '/work/ep/a.cut', 'C:\\\\b.cut', 'x/../../b.cut'])(
    'reaches nowhere else: %s',
    (path) => {
      const host = world({ 'a.cut': `use "${path}"\n` });
      host.files.set('/work/b.cut', Buffer.from(''));
      expect(follow(host, '/work/ep/a.cut')).toMatchObject({
        files: [],
        problems: ['use-outside ep/a.cut'],
        sources: [],
      });
    },
  );

  test('says the same of a file outside whether it is there or not', () => {
    const host = world({ 'a.cut': 'use "../there.cut"\n', 'b.cut': 'use "../nothere.cut"\n' });
    host.files.set('/work/there.cut', Buffer.from(''));
    const [there] = follow(host, '/work/ep/a.cut').messages;
    const [gone] = follow(host, '/work/ep/b.cut').messages;
    expect(there!.replace('there', '')).toBe(gone!.replace('nothere', ''));
  });

  test('reaches its own folder only where there is no episode', () => {
    const host = world({ 'a.cut': 'use "b.cut"\nuse "sub/c.cut"\n', 'b.cut': '', 'sub/c.cut': '' });
    expect(follow(host, '/work/ep/a.cut', null)).toMatchObject({
      files: ['ep/b.cut'],
      problems: ['use-outside ep/a.cut'],
    });
  });

  test('does not follow a link that leads out', () => {
    const host = world({ 'a.cut': 'use "b.cut"\n' });
    host.files.set('/secret/b.cut', Buffer.from('phrase p = 1\n'));
    host.links.set('/work/ep/b.cut', '/secret/b.cut');
    expect(follow(host, '/work/ep/a.cut')).toMatchObject({ files: [], problems: ['use-outside ep/a.cut'] });
  });

  test('a circle is an error that shows the chain', () => {
    const host = world({ 'a.cut': 'use "b.cut"\n', 'b.cut': 'use "c.cut"\n', 'c.cut': 'use "b.cut"\n' });
    expect(follow(host, '/work/ep/a.cut')).toMatchObject({
      problems: ['use-circle ep/c.cut'],
      messages: ['The files use each other in a circle: ep/b.cut → ep/c.cut → ep/b.cut.'],
    });
  });

  test('a file that uses itself, under another name, too', () => {
    const host = world({ 'a.cut': 'use "a.cut"\nuse "link.cut"\n' });
    host.links.set('/work/ep/link.cut', 'a.cut');
    expect(follow(host, '/work/ep/a.cut').messages).toEqual(Array(2).fill('The file uses itself.'));
  });

  test('a file that is missing, a folder, no text: told where it is used', () => {
    const host = world({
      'a.cut': 'use "hous.cut"\nuse "sub"\nuse "bad.cut"\n',
      'house.cut': '',
      'sub/x.cut': '',
    });
    host.files.set('/work/ep/bad.cut', Buffer.from([0x63, 0xff]));
    const { problems, messages } = follow(host, '/work/ep/a.cut');
    expect(problems).toEqual(['use-missing ep/a.cut', 'use-missing ep/a.cut', 'wrong-encoding ep/bad.cut']);
    expect(messages[0]).toContain('did you mean `house.cut`?');
    expect(messages[1]).toContain('is a folder');
  });

  test('what is wrong in a used file is told in that file', () => {
    const host = world({ 'a.cut': 'use "b.cut"\n', 'b.cut': 'phrase = 1\n' });
    const { problems, sources } = follow(host, '/work/ep/a.cut');
    expect(problems).toEqual([expect.stringMatching(/ ep\/b\.cut$/)]);
    expect(sources).toEqual(['ep/b.cut']);
  });

  test('hundreds of files are no house style', () => {
    const chain = Object.fromEntries(
      Array.from({ length: 300 }, (_, i) => [`f${i}.cut`, `use "f${i + 1}.cut"\n`]),
    );
    const { files, problems } = follow(world(chain), '/work/ep/f0.cut');
    expect(files).toHaveLength(200);
    expect(problems).toEqual(['use-missing ep/f200.cut']);
  });

  test('a run reads a shared file once', () => {
    const host = world({ 'a.cut': 'use "h.cut"\n', 'b.cut': 'use "h.cut"\n', 'h.cut': 'phrase = 1\n' });
    let reads = 0;
    const { read } = host;
    host.read = (path) => {
      reads += 1;
      return read(path);
    };
    const cache = newEpisodeCache();
    const one = follow(host, '/work/ep/a.cut', EPISODE, cache);
    const two = follow(host, '/work/ep/b.cut', EPISODE, cache);
    expect(reads).toBe(1);
    expect(two).toEqual(one);
  });
});

describe('a number that needs no grammar', () => {
  test.each([
    ['cut 12\ntime 1+0\n', '12'],
    ['cut 12A "Rooftop, dusk"   # a remark\ntime 1+0\n', '12A'],
    ['# first\n\ncut  7\n', '7'],
    ['\ufeffcut 7\r\ntime 1+0\r\n', '7'],
  ])('%j', (text, number) => {
    expect(plainNumber(text)).toBe(number);
  });

  test.each([
    ['in full width', 'ｃｕｔ 12\n'],
    ['behind another one', 'cut "x" 1\ncut 12\n'],
    ['that goes on in the next line', 'cut 12\n  "Rooftop"\n'],
    ['with a quote in its title', 'cut 12 "a \\" b"\n'],
    ['that is not there', 'time 1+0\nA: 1..\n'],
    ['with a control character in the text', 'cut 12\n\u0007\n'],
  ])('one %s is left to the grammar', (_, text) => {
    expect(plainNumber(text)).toBeNull();
  });
});

test('a word is mentioned where it stands, or where full-width letters may hide it', () => {
  expect(mentions('level A reuse 8/C', 'reuse')).toBe(true);
  expect(mentions('A: 1..', 'reuse')).toBe(false);
  expect(mentions('ｌｅｖｅｌ A', 'reuse')).toBe(true);
});

test('statements that may be a `use` are given as they stand there', () => {
  expect(
    usesIn('cut 1\nuse "a.cut"\nＡ: 1..\nｕｓｅ "b.cut"\n  # more\nmemo "use it"\n').map((one) => one.trim()),
  ).toEqual(['use "a.cut"', expect.stringMatching(/^ｕｓｅ "b\.cut"/)]);
  expect(usesIn('cut 1\nA: 1..\n')).toEqual([]);
});

describe('a scan', () => {
  const TEXT =
    '\ufeffcut 12 "Quay"\ntime 4+0\nfps 25\nuse "h.cut"\nlevel A reuse 8/C\nlevel BG size 5x2mm\noverlap in 12\nA: 1--2..\nmemo "cut 9"\n';

  test('reads what concerns other cuts, as the whole grammar does, and nothing else', () => {
    const kinds = ['cut', 'time', 'fps', 'use', 'overlap'];
    const { statements } = parse('c.cut', TEXT).tree;
    const expected = statements.filter(
      (one) => kinds.includes(one.kind) || (one.kind === 'level' && one.reuse !== null),
    );
    expect(expected).toHaveLength(6);
    expect(scan('c.cut', TEXT)).toEqual({ file: 'c.cut', statements: expected, broken: [] });
  });

  test('keeps what it could not read, with the word that it begins with', () => {
    const { statements, broken } = scan('c.cut', 'cut\ntime 1+0\noverlap sideways\n');
    expect(statements.map(({ kind }) => kind)).toEqual(['time']);
    expect(broken.map(({ word }) => word)).toEqual(['cut', 'overlap']);
    expect(broken[1]!.span).toMatchObject({ file: 'c.cut', start: 13 });
  });

  test('takes a level with the name of a statement for what it is', () => {
    expect(scan('c.cut', 'time: 1..\n').statements).toEqual([]);
  });
});
