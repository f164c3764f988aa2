import { describe, expect, test } from 'vitest';
import { type Compiled, compile, digest } from '../../src/episode/compile-cut.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';
import { defaults, type Settings } from '../../src/shot/settings.js';
import { runOn } from '../command/run.js';
import { compileText } from '../compile.js';

/** Compiles the cuts that an argument means, by their names. */
async function compiled(files: Record<string, string>, arg = '.'): Promise<Record<string, Compiled>> {
  const host = memoryHost(files);
  const { jobs } = await findCuts(host, [arg]);
  return Object.fromEntries(
    jobs.map(({ name, path, episode }) => [name, compile(host, path, episode, { name })]),
  );
}

const cut = (number: string, rest = 'A: 1--2..\n') => `cut ${number}\ntime 1+0\n${rest}`;
const codes = (one: Compiled | undefined) => one!.diagnostics.map(({ code }) => code);

describe('the episode', () => {
  test('gives a cut its settings, and the cut overrules them', async () => {
    const cuts = await compiled({
      'episode.yaml': 'fps: 25\non: 3\ntitle: X\n',
      'a.cut': cut('1'),
      'b.cut': cut('2', 'on 1\nA: 1--2..\n'),
    });
    expect(cuts['a.cut']!.shot).toMatchObject({ fps: 25, on: 3, time: 25, settings: { title: 'X' } });
    expect(cuts['b.cut']!.shot).toMatchObject({ on: 1 });
  });

  test('names the artists of a cut that names none itself', async () => {
    const cuts = await compiled({
      'episode.yaml': 'artists: { M. Arai: [1, "02"], L. Quoy: [２, 3] }\n',
      'a.cut': cut('1'),
      'b.cut': cut('2'),
      'c.cut': cut('3', 'artist "Self"\nA: 1..\n'),
    });
    expect(Object.values(cuts).map(({ shot }) => shot!.artists)).toEqual([
      ['M. Arai'],
      ['M. Arai', 'L. Quoy'],
      ['Self'],
    ]);
  });

  test('with a fault keeps its cuts from printing, and its faults come first', async () => {
    const cuts = await compiled({ 'episode.yaml': 'fsp: 24\n', 'a.cut': cut('1', 'A: 1\n') });
    expect(codes(cuts['a.cut'])).toEqual(['episode-key', 'timeline-short']);
  });
});

describe('a house file', () => {
  test('is nothing to print, and nothing wrong', async () => {
    const cuts = await compiled({
      'h.cut': 'phrase p = 1--2--\n',
      'a.cut': `use "h.cut"\n${cut('1', 'A: p..\n')}`,
    });
    expect(cuts['h.cut']).toMatchObject({ house: true, solved: null, diagnostics: [] });
    expect(cuts['a.cut']).toMatchObject({ house: false, diagnostics: [] });
  });

  test('is none when it only lost its first lines', async () => {
    const cuts = await compiled({
      'a.cut': 'cutt 1\nphrase p = 1\n',
      'b.cut': '',
      'c.cut': 'phrase p = 1\nA: p..\n',
    });
    expect(Object.values(cuts).map(({ house }) => house)).toEqual([false, false, false]);
  });
});

describe('characters that cannot be printed', () => {
  const bad = async (text: string, more: Record<string, string> = {}) => {
    const one = (await compiled({ ...more, 'a.cut': text }, 'a.cut'))['a.cut']!;
    return one.diagnostics
      .filter(({ code }) => code === 'missing-glyph')
      .map((each) => [
        one.sources.get(each.span.file)!.slice(each.span.start, each.span.end),
        messageOf(each, 'en'),
      ]);
  };

  test('are errors with their own place and code point', async () => {
    expect(await bad(cut('1', 'memo "Rain ☔ and 🎬 and ☔"\nA: 1..\n'))).toEqual([
      ['☔', '`☔` (U+2614) is not in the font and cannot be printed.'],
      ['🎬', '`🎬` (U+1F3AC) is not in the font and cannot be printed.'],
      ['☔', '`☔` (U+2614) is not in the font and cannot be printed.'],
    ]);
  });

  test('are looked for in every text and name that is printed', async () => {
    const text = cut(
      '1 "🎬"',
      'artist "🎬"\nscene "🎬"\ntake "🎬"\nnote 1 "🎬"\nmemo "🎬"\nA "🎬": 1..\nvoice "🎬" 1..12 "a 🎬" @6 "🎬"\nsound 1..12 "🎬"\nmusic 1..12 "🎬"\n',
    );
    expect(await bad(text)).toHaveLength(12);
    expect(await bad(cut('1', 'stack ꀀ\nꀀ: 1..\n'))).toEqual([
      ['ꀀ', expect.stringContaining('U+A000')],
      ['ꀀ', expect.stringContaining('U+A000')],
    ]);
  });

  test('do not matter where nothing is printed', async () => {
    expect(await bad(cut('1', '# 🎬\nmark ꀀ 3\nphrase ꀁ = 1--2--\nA: ꀁ..\n'))).toEqual([]);
  });

  test('are found in the manifest', async () => {
    expect(await bad(cut('1'), { 'episode.yaml': 'title: "Lights 🎬"\nartists: { ☔: 1 }\n' })).toEqual([
      ['🎬', expect.stringContaining('U+1F3AC')],
      ['☔', expect.stringContaining('U+2614')],
    ]);
  });

  test('control characters are named, not shown', async () => {
    expect((await bad(cut('1', 'memo "a\tb"\nA: 1..\n')))[0]![1]).toBe(
      'A tab (U+0009) is not in the font and cannot be printed.',
    );
    expect((await bad(cut('1', 'memo "\u202eabc"\nA: 1..\n')))[0]![1]).toBe(
      'The character U+202E is not in the font and cannot be printed.',
    );
  });

  test('a line break is none, Japanese is none, and a letter with its marks is one character', async () => {
    expect(await bad(cut('1', 'memo "a\\nb 「雨」ー～ か\u3099 e\u0301"\nA: 1..\n'))).toEqual([]);
  });
});

describe('a reused level', () => {
  const eight = cut('8', 'C: 1--2 x..\n');
  const nine = (level: string, timeline: string) => cut('9', `level C reuse ${level}\nC: ${timeline}\n`);

  test('has the names and numbers of the other cut, and only what that lacks is counted', async () => {
    const cuts = await compiled({ 'episode.yaml': '', '8.cut': eight, '9.cut': nine('8/C', '2 1--2 3..') });
    const { levels, counts } = cuts['9.cut']!.solved!;
    const numbers = levels
      .find(({ name }) => name === 'C')!
      .drawings.map(({ cel, drawing }) => [cel, drawing]);
    expect(numbers).toEqual([
      [1, '1'],
      [2, '1.1'],
      [3, '1.2'],
      [4, '2'],
      [5, '3'],
    ]);
    expect(counts).toMatchObject({ drawings: 1, reused: 4 });
    expect(codes(cuts['9.cut'])).toEqual([]);
  });

  test.each([
    ['80/C', 'The episode has no cut 80, so'],
    ['8/D', 'Cut 8 has no level D, so'],
    ['7/C', 'Cut 7 has errors, so'],
    ['6/C', 'Level C of cut 6 itself reuses one that is not to be found, so'],
  ])('%s that cannot be had is a warning that says why', async (level, words) => {
    const cuts = await compiled(
      {
        'episode.yaml': '',
        '8.cut': eight,
        '7.cut': cut('7', 'C: 1\n'),
        '6.cut': cut('6', 'level C reuse 70/C\nC: 1..\n'),
        '9.cut': nine(level, '1..'),
      },
      '9.cut',
    );
    const warnings = cuts['9.cut']!.diagnostics.filter(({ code }) => code === 'reuse-unknown');
    expect(warnings.map((one) => messageOf(one, 'en'))).toEqual([expect.stringMatching(`^${words}`)]);
  });

  test('outside an episode is looked at by itself, without a word', async () => {
    const cuts = await compiled({ '8.cut': eight, '9.cut': nine('8/C', '1..') });
    expect(codes(cuts['9.cut'])).toEqual([]);
  });
});

describe('the digest', () => {
  const digest = async (files: Record<string, string>) => (await compiled(files, 'a.cut'))['a.cut']!.digest;
  const base = {
    'episode.yaml': 'title: X\n',
    'a.cut': `use "h.cut"\n${cut('1', 'A: p..\n')}`,
    'h.cut': 'phrase p = 1--2--\n',
  };

  test('is short, and the same for the same text', async () => {
    expect(await digest(base)).toMatch(/^[0-9a-f]{10}$/);
    expect(await digest(base)).toBe(await digest({ ...base }));
  });

  test('does not care for line ends, a byte-order mark, or the look of the form', async () => {
    const same = await digest(base);
    expect(await digest({ ...base, 'a.cut': base['a.cut'].replaceAll('\n', '\r\n') })).toBe(same);
    expect(await digest({ ...base, 'a.cut': `\uFEFF${base['a.cut']}` })).toBe(same);
    expect(await digest({ ...base, 'episode.yaml': 'title: X\npaper: A3\nlabels: ja\n' })).toBe(same);
  });

  test('changes with the text, what it uses, and the settings that matter', async () => {
    const variants = [
      base,
      { ...base, 'a.cut': `${base['a.cut']}memo "x"\n` },
      { ...base, 'h.cut': 'phrase p = 1-2-\n' },
      { ...base, 'episode.yaml': 'title: Y\n' },
      { ...base, 'episode.yaml': 'title: X\non: 3\n' },
      { ...base, 'episode.yaml': 'title: X\nartists: { M: 1 }\n' },
    ];
    expect(new Set(await Promise.all(variants.map(digest))).size).toBe(variants.length);
  });
});

const of = (texts: readonly string[], settings: Partial<Settings> = {}, artists: readonly string[] = []) =>
  digest(texts, { ...defaults, ...settings }, artists);

test('line ends do not count', () => {
  expect(of(['a\r\nb\rc\n'])).toBe(of(['a\nb\nc\n']));
  expect(of(['a\n\nb'])).not.toBe(of(['a\nb']));
});

test('where one text ends and the next begins counts', () => {
  expect(of(['ab', 'c'])).not.toBe(of(['a', 'bc']));
  expect(of(['ab'])).not.toBe(of(['ab', '']));
});

test('settings count that change what is meant, and no others', () => {
  const other: Partial<Settings>[] = [
    { title: 'Ferry' },
    { episode: '3' },
    { fps: 25 },
    { on: 3 },
    { numbering: 'frame' },
    { field: { widthMm: 300, heightMm: 200 } },
    { fields: 16 },
    { artwork: { widthMm: 420, heightMm: 297 } },
    { output: { width: 3840, height: 2160 } },
    { scanDpi: 300 },
    { overlap: 'full' },
  ];
  expect(new Set([of(['a']), ...other.map((settings) => of(['a'], settings))]).size).toBe(other.length + 1);
  for (const look of [{ paper: 'A3' }, { labels: 'ja' }, { convention: 'west' }, { rows: 72 }] as const)
    expect(of(['a'], look)).toBe(of(['a']));
});

test('who draws it counts', () => {
  expect(of(['a'], {}, ['M. Arai'])).not.toBe(of(['a']));
});

describe('accepted warnings', () => {
  // ---- `accept CODE "reason"`

  const codes = (text: string, files: Readonly<Record<string, string>> = {}): string[] =>
    compileText(text, files).diagnostics.map(({ code, severity }) => `${severity} ${code}`);

  /** A hint, and a warning. */
  const CUT = 'cut 1\ntime 1+0\nmark hit 9\nstack BG A C\nlevel C flash\nA: 1..\nC: (1:2 x:4)..\n';
  const FLASHES = 'accept flashes "seen at the test"\n';

  test('a warning or a hint that is accepted is not told, the others are', () => {
    expect(codes(CUT)).toEqual(['hint mark-unused', 'warning flashes']);
    expect(codes(`${CUT}${FLASHES}`)).toEqual(['hint mark-unused']);
    expect(codes(`${FLASHES}${CUT}accept mark-unused "for the sound"\n`)).toEqual([]);
  });

  test('every one of its code is silenced, in a used file as well', () => {
    const files = { 'house.cut': 'phrase p = 1--2\n' };
    const marks = 'mark hit 9\nmark again 10\n';
    expect(codes(`cut 1\ntime 1+0\n${marks}A: 1..\n`)).toEqual(['hint mark-unused', 'hint mark-unused']);
    expect(codes(`cut 1\ntime 1+0\n${marks}A: 1..\naccept mark-unused "later"\n`, files)).toEqual([]);
  });

  test('what silences nothing is a hint, which is mended by taking it out and can be accepted itself', () => {
    const idle = 'cut 1\ntime 1+0\nA: 1..\naccept strobing "looks right"\n';
    const [hint, ...more] = compileText(idle).diagnostics;
    expect(more).toEqual([]);
    expect(messageOf(hint!, 'en')).toBe('This cut gives no `strobing`, so there is nothing to accept.');
    const { span, text } = hint!.fix!.edits[0]!;
    expect(codes(idle.slice(0, span.start) + text + idle.slice(span.end))).toEqual([]);
    expect(codes(`${idle}accept accept-unused "comes back with take 2"\n`)).toEqual([]);
    expect(codes('cut 1\ntime 1+0\nA: 1..\naccept accept-unused "why not"\n')).toEqual([
      'hint accept-unused',
    ]);
  });

  test('beside an error nobody is told to take it out: the warning may come back', () => {
    expect(codes('cut 1\ntime 1+0\nA: 1 -\naccept strobing "looks right"\n')).not.toContain(
      'hint accept-unused',
    );
  });

  test('an error cannot be accepted, and stays', () => {
    expect(codes('cut 1\ntime 1+0\nA: 1--2\naccept timeline-short "enough"\n')).toEqual([
      'error timeline-short',
      'error accept-error',
    ]);
  });

  test('a code that is none gets a guess, and is replaced by it', () => {
    const [unknown] = compileText('cut 1\ntime 1+0\nA: 1..\naccept strobin "looks right"\n').diagnostics;
    expect(messageOf(unknown!, 'en')).toBe('There is no message `strobin`; did you mean `strobing`?');
    expect(unknown!.fix?.edits[0]?.text).toBe('strobing');
    const [none] = compileText('cut 1\ntime 1+0\nA: 1..\naccept toString "x"\n').diagnostics;
    expect([none!.code, none!.fix]).toEqual(['accept-unknown', undefined]);
  });

  test.each([
    ['accept flashes', 'missing-word'],
    ['accept "why"', 'missing-word'],
    ['accept mark - unused "why"', 'unexpected'],
  ])('%s is not read', (line) => {
    const { diagnostics, tree } = compileText(`cut 1\ntime 1+0\nA: 1..\n${line}\n`);
    expect(diagnostics.some(({ severity }) => severity === 'error')).toBe(true);
    expect(tree!.broken.map(({ word }) => word)).toEqual(['accept']);
  });

  test('twice is once too often', () => {
    expect(codes(`${CUT}${FLASHES}${FLASHES}`)).toContain('error statement-twice');
  });

  test('full-width letters and hyphens are read as the plain ones', () => {
    expect(codes(`${CUT}ａｃｃｅｐｔ　ｍａｒｋ－ｕｎｕｓｅｄ　「後で」\n`)).toEqual(['warning flashes']);
  });

  test('the reason is in no print and needs no letter of the font', async () => {
    expect(codes(`${CUT}${FLASHES}accept mark-unused "\u{1F600}"\n`)).toEqual([]);
    const { out } = await runOn({ '1.cut': `${CUT}${FLASHES}` }, 'show', '1.cut');
    expect(out).not.toContain('seen at');
  });

  test('--strict does not count what is accepted', async () => {
    const hint = 'accept mark-unused "later"\n';
    expect((await runOn({ '1.cut': `${CUT}${hint}` }, 'check', '--strict', '1.cut')).status).toBe(1);
    expect((await runOn({ '1.cut': `${CUT}${hint}${FLASHES}` }, 'check', '--strict', '1.cut')).status).toBe(
      0,
    );
  });

  test('is formatted with its code in one piece', async () => {
    const { out } = await runOn(
      { '1.cut': 'cut 1\ntime 1+0\nA: 1..\naccept   mark-unused   "later"\n' },
      'format',
      '--diff',
      '1.cut',
    );
    expect(out).toContain('+accept mark-unused "later"\n');
  });
});
