import { describe, expect, test } from 'vitest';
import type { UserLanguage } from '../../src/language/user-language.js';
import { hoverAt, statementText } from '../../src/lsp/hover.js';
import { tone, wave } from '../sound/wave-writer.js';
import { opened } from './opened.js';

/** What is said at the cursor, and the piece of the text that it is said of. */
async function said(
  typed: string,
  files: Readonly<Record<string, string | Uint8Array>> = {},
  language: UserLanguage = 'en',
) {
  const { workspace, analysis, cursor } = await opened(typed, files, { language });
  const hover = hoverAt(workspace, analysis, cursor);
  if (!hover) return null;
  const { start, end } = hover.range!;
  const { value } = hover.contents as { value: string };
  const { text } = analysis;
  return { text: value, of: text.text.slice(text.offset(start), text.offset(end)) };
}

describe('a time', () => {
  test('that is a length is told in frames, seconds and feet', async () => {
    expect(await said('cut 1\ntime 1|+0\nA: 1..\n')).toEqual({
      of: '1+0',
      text: "24 frames = 1+0 = 1'08 of 35 mm film",
    });
  });

  test('that hangs on a mark is the frame that the mark comes to', async () => {
    const { text, of } = (await said('cut 1\ntime 2+0\nmark hit 1+6\nnote hit+|3 "now"\nA: 1..\n'))!;
    expect(of).toBe('hit+3');
    expect(text).toMatch(/^Mark `hit` \+ 3: frame 33: row /);
  });

  test('that hangs on itself says nothing of a frame', async () => {
    const one = await said('cut 1\ntime 2+0\nmark a b+1\nmark b a+1\nnote a+|3 "now"\nA: 1..\n');
    expect(one?.text ?? '').not.toContain('frame');
  });
});

describe('a name', () => {
  test('of a level is told as the level', async () => {
    const one = await said('cut 1\ntime 1+0\n|A "Nao": 1--2..\n');
    expect([one!.of, one!.text.split('  \n')[0]]).toEqual(['A', 'Level **A** “Nao”']);
  });

  test('of a phrase in a timeline says where it is played; elsewhere how long it is', async () => {
    const played = await said('cut 1\ntime 1+0\nphrase walk = 1:2 2:2\nA: wa|lk*2 3..\n');
    expect(played).toEqual({
      of: 'walk',
      text: 'Phrase `walk`: frames 1–8, 8 frames (0+8), 2 passes of 4 frames',
    });
    const defined = await said('cut 1\ntime 1+0\nphrase wa|lk = 1:2 2:2\nA: walk*2 3..\n');
    expect(defined).toEqual({ of: 'walk', text: 'Phrase `walk`: 4 frames (0+4) a pass' });
  });

  test('of a field in a move is told as the field', async () => {
    const one = await said('cut 1\ntime 1+0\nfield B full at 5,0\npan full@1 > |B@24\nA: 1..\n');
    expect([one!.of, one!.text.split(':')[0]]).toEqual(['B', 'Field `B`']);
  });
});

describe('a cut from which a level is reused', () => {
  const files = { 'episode.yaml': '', 'c8.cut': 'cut 8 "The ferry"\ntime 1+0\nC: 1..\n' };

  test('has its title', async () => {
    expect(await said('cut 1\ntime 1+0\nlevel A reuse |8/C\nA: 1..\n', files)).toEqual({
      of: '8',
      text: 'Cut 8 “The ferry”',
    });
  });

  test('may not be there', async () => {
    expect((await said('cut 1\ntime 1+0\nlevel A reuse |9/C\nA: 1..\n', files))!.text).toBe(
      'The episode has no cut 9.',
    );
  });
});

describe('a word of the language', () => {
  test('at the beginning of a statement has its page', async () => {
    const one = await said('cut 1\nti|me 1+0\nA: 1..\n');
    expect(one!.of).toBe('time');
    expect(one!.text).toBe(statementText('time', 'en'));
    expect(one!.text).toMatch(/^\*\*time\*\*: .+\n\n```cut\ntime /);
  });

  test('inside a statement has its own line of that page', async () => {
    const one = await said('cut 1\ntime 2+0\nfield B full at 5,0\npan full@1 > B@24 ea|se 6 6\nA: 1..\n');
    expect(one!.text).toMatch(/^`ease/);
  });

  test('in full width is the same word', () => {
    expect(statementText('ｔｉｍｅ', 'en')).toBe(statementText('time', 'en'));
  });

  test('that begins no statement has no page', () => {
    expect(statementText('ease', 'en')).toBeNull();
    expect(statementText('constructor', 'en')).toBeNull();
  });
});

test('an empty line says nothing', async () => {
  expect(await said('cut 1\ntime 1+0\n|\n\nA: 1..\n')).toBeNull();
});

test('a recording is told with its length and its rows', async () => {
  const files = { 'a.wav': wave(tone(2, 0, 2, 4000), { rate: 4000, channels: 2 }) };
  const one = await said('cut 1\ntime 1+0\ntrack "a|.wav" @13\nA: 1..\n', files);
  expect(one).toEqual({ of: '"a.wav"', text: 'Recording of 2 s, 4 kHz, stereo; heard on rows 13 to 24' });
  expect(await said('cut 1\ntime 1+0\ntrack "b|.wav"\nA: 1..\n', files)).toBeNull();
});

test('times, cuts and recordings are told in the language of the editor', async () => {
  const files = { 'a.wav': wave(tone(2, 0, 2, 4000), { rate: 4000, channels: 2 }), 'episode.yaml': '' };
  const text = async (typed: string) => (await said(typed, files, 'ja'))!.text;
  expect(await text('cut 1\ntime 1|+0\nA: 1..\n')).toBe("24コマ = 1+0 = 35 mm フィルムで 1'08");
  expect(await text('cut 1\ntime 2+0\nmark hit 1+6\nnote hit+|3 "now"\nA: 1..\n')).toMatch(
    /^マーク `hit` \+ 3：33コマ目：/,
  );
  expect(await text('cut 1\ntime 1+0\ntrack "a|.wav" @13\nA: 1..\n')).toBe(
    '録音 2 秒、4 kHz、ステレオ。13～24行目で聞こえる',
  );
  expect(await text('cut 1\ntime 1+0\nlevel A reuse |9/C\nA: 1..\n')).toBe('話数にカット9はありません。');
});
