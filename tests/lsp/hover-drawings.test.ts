import { describe, expect, test } from 'vitest';
import type { StatementOf } from '../../src/language/tree.js';
import { drawingAt, groupAt, levelText, phraseText } from '../../src/lsp/hover-drawings.js';
import { type Opened, opened } from './opened.js';

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
