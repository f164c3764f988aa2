import { describe, expect, test } from 'vitest';
import type { StatementOf } from '../../src/language/tree.js';
import { drawingAt, fieldText, groupAt, levelText, moveText, phraseText } from '../../src/lsp/hover-texts.js';
import { type Opened, opened } from './opened.js';

const cut = (lines: string) => `cut 1\ntime 2+0\nstack BG A\n${lines}\nA: 1..\n`;
const field = async (lines: string, name: string) => fieldText((await opened(cut(lines))).analysis, name);

describe('a field', () => {
  test('is told in millimetres, in percent, and on the chart', async () => {
    // Half of 254 × 142.875 mm; 12 fields; a step of the chart is a 24th of the standard width: 254 / 24 = 10.58 mm.
    expect(await field('field A 50% at 21.1667,0', 'A')).toBe(
      'Field `A`: 127 × 71.44 mm, 50 % of the standard field  \ncentre 21.17, 0 mm; on the 12-field chart 6F 2E',
    );
  });

  test('`full` is the standard field, and needs no statement', async () => {
    expect(await field('', 'full')).toBe(
      'Field `full`: 254 × 142.88 mm, 100 % of the standard field  \ncentre 0, 0 mm; on the 12-field chart 12F',
    );
  });

  test('nobody has defined says nothing', async () => {
    expect(await field('', 'wide')).toBeNull();
  });

  test('says its turn, and whether that is clockwise', async () => {
    expect(await field('field A 50% cw 5', 'A')).toContain(', turned 5° clockwise; ');
    expect(await field('field A 50% ccw 5', 'A')).toContain(', turned 5° counter-clockwise; ');
  });
});

describe('a move', () => {
  const text = async (lines: string) => {
    const { analysis, at } = await opened(cut(lines));
    return moveText(analysis, at('pan '), 'c1.cut');
  };

  test('says its frames, its way, its speed and its largest step', async () => {
    // 110 mm over 22 steps are 5 mm a frame, and 5 / 254 = 1.97 %.
    expect(await text('field A full\nfield B full at 110,0\npan A@1 > B@23')).toMatch(
      /^Pan: frames 2–23, 22 frames \(0\+22\) in 22 steps {2}\nway 110 mm, 5 mm\/f throughout {2}\nlargest step 5 mm on frame 2: 1\.97 % /,
    );
  });

  test('that turns says from where to where, and to which side', async () => {
    const turn = async (way: string) => {
      const { analysis, at } = await opened(cut(`A: 1..\nturn level A ${way}`));
      return moveText(analysis, at('turn '), 'c1.cut')!.split('  \n')[1];
    };
    expect(await turn('0@1 > 48@24 ccw')).toBe('from 0° to 48° counter-clockwise');
    expect(await turn('0@1 > -48@24 ccw')).toBe('from 0° to 48° clockwise');
    expect(await turn('0@1 > 48@12 > 40@24 ccw')).toBe('from 0° to 40° (+ is counter-clockwise)');
    expect(await turn('5@1 > -20@24 ccw')).toBe('from -5° to 20° (+ is clockwise)');
  });

  test('of a statement that is none says nothing', async () => {
    const { analysis } = await opened(cut('field A full\nfield B full at 110,0\npan A@1 > B@23'));
    expect(moveText(analysis, 0, 'c1.cut')).toBeNull();
    expect(moveText(analysis, analysis.text.text.indexOf('pan '), 'other.cut')).toBeNull();
  });
});

const timeline = ({ analysis }: Opened) =>
  analysis.compiled!.tree!.statements.find((one): one is StatementOf<'timeline'> => one.kind === 'timeline')!;

describe('a drawing under the cursor', () => {
  const at = async (typed: string) => {
    const { analysis, cursor } = await opened(typed);
    return drawingAt(analysis, cursor);
  };

  test('says its number, its frames, and the passage that a key leads into', async () => {
    expect(await at('cut 1\ntime 1+0\nA: |1:6 --2..\n')).toBe(
      '**A 1**: key drawing, number A1  \nhere frames 1–6: 6 frames (0+6)  \n1 → 2: 2 in-betweens at 0.3333, 0.6667 of the way (even)',
    );
  });

  test('between two items is the second one', async () => {
    expect(await at('cut 1\ntime 1+0\nA: 1-|-2..\n')).toContain('**A 1.2**: in-between, number A3');
  });

  test('in a cycle says how often it is shown there, and how long in all', async () => {
    const said = await at('cut 1\ntime 1+0\nA: (1:2 |2:2)*3 1..\n');
    expect(said).toContain('here frames 3–4, 7–8, 11–12: 6 frames (0+6), 3 times');
    const first = await at('cut 1\ntime 1+0\nA: (|1:2 2:2)*3 1..\n');
    expect(first).toContain('in all 18 frames (0+18), first on frame 1');
  });

  test('of an empty level says that it is empty', async () => {
    expect(await at('cut 1\ntime 1+0\nA: |x:12 1..\n')).toBe(
      '**A**: empty  \nhere frames 1–12: 12 frames (0+12)',
    );
  });

  test('outside a timeline says nothing', async () => {
    expect(await at('cut |1\ntime 1+0\nA: 1..\n')).toBeNull();
  });
});

describe('a group', () => {
  test('says its frames and how often it runs', async () => {
    const one = await opened('cut 1\ntime 1+0\nA: (1:2 2:2)|*3 1..\n');
    expect(groupAt(one.analysis, timeline(one), one.cursor)).toBe(
      'Group: frames 1–12, 12 frames (0+12), 3 passes of 4 frames',
    );
  });

  test('that runs to the end may stop inside a pass', async () => {
    const one = await opened('cut 1\ntime 1+0\nA: (1:8 2:8)|..\n');
    expect(groupAt(one.analysis, timeline(one), one.cursor)).toBe(
      'Group: frames 1–24, 24 frames (1+0), 1.5 passes of 16 frames',
    );
  });

  test('of a phrase has its name, and runs once where nothing is said', async () => {
    const one = await opened('cut 1\ntime 1+0\nphrase walk = 1:2 2:2\nA: walk| 3..\n');
    expect(groupAt(one.analysis, timeline(one), one.cursor)).toBe(
      'Phrase `walk`: frames 1–4, 4 frames (0+4), once',
    );
  });
});

describe('a phrase', () => {
  test('is as long as the cut plays it, each length once', async () => {
    const { analysis } = await opened(
      'cut 1\ntime 2+0\nphrase walk = 1-2\nA: walk*2 1..\nB: on 3 walk*2 1..\nC: walk 1..\n',
    );
    expect(phraseText(analysis, 'walk')).toBe('Phrase `walk`: 6 frames (0+6), 9 frames (0+9) a pass');
  });

  test('that the cut does not play has no length', async () => {
    const { analysis } = await opened('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1..\n');
    expect(phraseText(analysis, 'walk')).toBe('Phrase `walk`');
  });
});

describe('a level', () => {
  const text = async (lines: string, name = 'A', files = {}) => {
    const { analysis } = await opened(`cut 1\ntime 1+0\n${lines}`, files);
    return levelText(analysis, name);
  };

  test('says what is drawn for it, and on how many frames it is seen', async () => {
    const said = await text('A "Nao": 1--2:4 x:12 3..\n');
    expect(said!.split('  \n').slice(0, 3)).toEqual([
      'Level **A** “Nao”',
      '5 drawings: 3 keys, 2 in-betweens',
      'seen on 12 frames (0+12) of 24 frames (1+0), empty on 12',
    ]);
  });

  test('says from which level it reuses, and how many of its drawings', async () => {
    const files = { 'episode.yaml': '', 'c8.cut': 'cut 8\ntime 1+0\nC: 1-2..\n' };
    const said = await text('level A reuse 8/C\nA: 1-2 3..\n', 'A', files);
    expect(said).toContain('1 drawings: 1 keys, 0 in-betweens; 3 reused');
    expect(said).toContain('reuses the drawings of 8/C');
  });

  test('names the numbers that are not used', async () => {
    expect(await text('A: 1 2..\ncels A 1 _ 2\n')).toContain('numbers not used: A2');
  });

  test('that is not there says nothing', async () => {
    expect(await text('A: 1..\n', 'Z')).toBeNull();
  });
});

describe('in Japanese', () => {
  const ja = (typed: string, files = {}) => opened(typed, files, { language: 'ja' });

  test('a field and a move', async () => {
    const { analysis, at } = await ja(
      cut('field A full\nfield B 50% at 110,0 cw 5\npan A@1 > B@23 ease 6 6'),
    );
    expect(fieldText(analysis, 'B')).toMatch(
      /^フレーム `B`：127 × 71\.44 mm、標準フレームの 50 % {2}\n中心 110, 0 mm、右回りに 5°。12フィールドチャートで `6F /,
    );
    expect(moveText(analysis, at('pan '), 'c1.cut')).toMatch(
      /^PAN：2～23コマ目、22コマ（0\+22）、22ステップ/,
    );
  });

  test('a drawing, a group and a level', async () => {
    const drawn = await ja('cut 1\ntime 1+0\nA: |1:6 --2..\n');
    expect(drawingAt(drawn.analysis, drawn.cursor)).toBe(
      '**A 1**：原画、動画番号 A1  \nここは 1～6コマ目：6コマ（0+6）  \n1 → 2：中割り2枚、割合 0.3333、0.6667（均等）',
    );
    const cycle = await ja('cut 1\ntime 1+0\nA: (1:2 |2:2)*3 1..\n');
    expect(drawingAt(cycle.analysis, cycle.cursor)).toContain(
      'ここは 3～4、7～8、11～12コマ目：6コマ（0+6）、3回',
    );
    const one = await ja('cut 1\ntime 1+0\nA: (1:2 2:2)|*3 1..\n');
    expect(groupAt(one.analysis, timeline(one), one.cursor)).toBe(
      'グループ：1～12コマ目、12コマ（0+12）、4コマのリピート 3回',
    );
    const { analysis } = await ja('cut 1\ntime 1+0\nA "Nao": 1--2:4 x:12 3..\n');
    expect(levelText(analysis, 'A')!.split('  \n').slice(0, 3)).toEqual([
      'セル **A**「Nao」',
      '動画枚数 5：原画 3、中割り 2',
      '24コマ（1+0）のうち 12コマ（0+12） 見える。空セル 12コマ',
    ]);
  });
});
