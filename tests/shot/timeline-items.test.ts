import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import { messageOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';
import type { Chart } from '../../src/language/tree.js';
import { bind } from '../../src/shot/bind-cut.js';
import { defaults } from '../../src/shot/settings.js';
import { bindChart, bindOn, DEEPEST } from '../../src/shot/timeline-items.js';
import { explained } from '../explained.js';
import { shown } from '../solve/shown.js';
import { bindText, withLines } from './bind.js';

describe('exposure', () => {
  test('an item that says nothing is exposed on twos', () => {
    expect(shown(8, '1--2').runs).toBe('1*2 1.1*2 1.2*2 2*2');
  });

  test('a statement `on 3` changes that for the cut', () => {
    expect(shown(6, '1-:1 2:2', 'on 3').runs).toBe('1*3 1.1*1 2*2');
  });

  test('`on` counts from where it stands to the end of its group', () => {
    expect(shown(16, '1 on 1 - (on 3 2 3) 4 on 2 5..').runs).toBe('1*2 1.1*1 2*3 3*3 4*1 5*6');
  });

  test('a length of its own goes for one item, in `1---:3` for the last dash', () => {
    expect(shown(11, '1---:3 2').runs).toBe('1*2 1.1*2 1.2*2 1.3*3 2*2');
  });

  test('lengths may be seconds and frames, or feet and frames', () => {
    expect(shown(24 + 6 + 36, "1:1+6 2:2'04").runs).toBe('1*30 2*36');
  });
});

describe('phrases', () => {
  test('are their items in parentheses, exposed as the timeline that plays them says', () => {
    const phrase = 'phrase walk = 1--2--';
    expect(shown(12, 'walk', phrase).runs).toBe(shown(12, '(1--2--)').runs);
    expect(shown(24, 'walk*2', phrase).runs).toBe(shown(24, '(1--2--)*2').runs);
    expect(shown(18, 'on 3 walk', phrase).runs).toBe(shown(18, 'on 3 (1--2--)').runs);
  });

  test('play phrases', () => {
    expect(
      shown(16, 'both*2', 'phrase both = one two\nphrase one = 1-\nphrase two = 2-').level.drawings,
    ).toHaveLength(4);
  });
});

describe('phrases by their names', () => {
  test('that play themselves show the chain, once', () => {
    const { codes, diagnostics } = withLines(
      'phrase a = 1 b',
      'phrase b = 2 c*2',
      'phrase c = on 3 3 a',
      'B: a..',
      'C: on 3 b..',
    );
    expect(codes).toEqual(['error phrase-circle']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe('A phrase cannot play itself: `a` → `b` → `c` → `a`.');
    expect(withLines('phrase a = 1 a', 'B: a..').codes).toEqual(['error phrase-circle']);
  });

  test('that are not there: did you mean', () => {
    const { codes, diagnostics } = withLines('phrase walk = 1--2--', 'B: wakl*2', 'C: walk..');
    expect(codes).toEqual(['error unknown-phrase']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('walk');
  });

  test('that are not there, on a line of their own: the timeline of a level that was indented', () => {
    const { codes, diagnostics } = withLines('B: 1:12 1--2..', '  D: 1--2..');
    expect(codes).toEqual(['error indented-statement']);
    const [edit] = diagnostics[0]!.fix!.edits;
    expect([edit!.text, edit!.span.end - edit!.span.start]).toEqual(['', 2]);
    for (const line of ['  D:2+0', 'D: 1', '  D*2', '  2 D: 1'])
      expect(withLines('B: 1:12 2', `  ${line}..`).codes, line).not.toContain('error indented-statement');
    expect(withLines('phrase D = 1--', 'B: 1:12', '  D: 4 2..').codes).toEqual([]);
  });

  test('that an unreadable statement began are not reported as unknown', () => {
    expect(withLines('phrase walk = 1--???', 'B: walk..').codes).toEqual([]);
  });
});

describe('the items of a timeline', () => {
  const bound = (items: string, lines = '') => {
    const { shot, codes } = bindText(`cut 1\ntime 5+0\nA: ${items}\n${lines}\n`);
    const { timeline } = shot!.levels.find(({ name }) => name === 'A')!;
    return { items: timeline!.items, whole: timeline!.whole, codes };
  };

  test('have their frames, and whether they said so themselves', () => {
    expect(bound('1 on 3 - 2:8 3..').items).toMatchObject([
      { kind: 'key', name: '1', frames: 2, own: false, open: false },
      { kind: 'between', frames: 3, own: false },
      { kind: 'key', frames: 8, own: true },
      { kind: 'key', frames: 3, own: false, open: true },
    ]);
  });

  test('of an `on` inside a group end with it', () => {
    expect(bound('(on 3 1) 2..').items).toMatchObject([{ items: [{ frames: 3 }] }, { frames: 2 }]);
  });

  test.each([
    ['1:0 2..', 'error length-zero'],
    ['1:2.. 2..', 'error length-and-open'],
    ['1.. 2..', 'error after-open'],
    ['(1 @5 2)..', 'error at-in-group'],
    ['(1 2..)*2 3..', 'error open-in-group'],
    ['(on 3) 1..', 'error group-empty'],
    ['(1 2)*0 3..', 'error repeat-zero'],
    ['on 241 1..', 'error on-range'],
  ])('%s: %s', (items, code) => {
    expect(bound(items).codes).toContain(code);
  });

  test('are not whole where one could not be bound', () => {
    expect(bound('1 2..').whole).toBe(true);
    expect(bound('1:0 2..').whole).toBe(false);
    expect(bound('1 wlk 2..').whole).toBe(false);
    expect(bound('1.. 2..').whole).toBe(false);
    expect(bound('on 241 1..').whole).toBe(true);
  });

  test('an @ ends what went on', () => {
    expect(bound('1.. @9 2..').codes).toEqual([]);
  });

  test('a group played once may go on at its end', () => {
    expect(bound('(1 2..)').codes).toEqual([]);
    expect(bound('(1 2..) 3').codes).toEqual(['error after-open']);
  });

  test('phrases are groups that know their name, and are bound once for each exposure', () => {
    const { items } = bound('walk walk*2 on 3 walk', 'phrase walk = 1--2--');
    expect(items).toMatchObject([
      { kind: 'group', phrase: 'walk', repeat: { form: 'times', times: 1 } },
      { kind: 'group', phrase: 'walk', repeat: { form: 'times', times: 2 } },
      { kind: 'group', phrase: 'walk' },
    ]);
    const inner = items.map((item) => (item.kind === 'group' ? item.items : null));
    expect(inner[1]).toBe(inner[0]);
    expect(inner[2]).not.toBe(inner[0]);
  });

  test(`groups and phrases stand in each other ${DEEPEST} deep, and no deeper`, () => {
    const nested = (items: string, depth: number) => `${'('.repeat(depth)}${items}${')'.repeat(depth)}`;
    const both = (inner: number) =>
      bound(`${nested('walk', 40)}..`, `phrase walk = ${nested('1 2', inner)}`).codes;
    expect(both(DEEPEST - 41)).toEqual([]);
    expect(both(DEEPEST - 40)).toContain('error too-deep');
    const chain = (links: number) =>
      bound(
        'p1..',
        Array.from(
          { length: links },
          (_, i) => `phrase p${i + 1} = 1 ${i + 1 < links ? `p${i + 2}` : '2'}`,
        ).join('\n'),
      ).codes;
    expect(chain(DEEPEST)).toEqual([]);
    expect(chain(DEEPEST + 1)).toContain('error too-deep');
  });

  test('of a used file that could not be read, phrases are not called unknown', () => {
    const tree = parse('this.cut', 'cut 1\ntime 5+0\nA: walk..\n').tree;
    const codes = (unread: boolean) =>
      bind(tree, [], defaults, { unread }).diagnostics.map(({ code }) => code);
    expect(codes(true)).toEqual([]);
    expect(codes(false)).toEqual(['unknown-phrase']);
  });
});

describe('a number behind `on`', () => {
  test.each([
    [1, 1],
    [240, 240],
    [0, null],
    [241, null],
    [1.5, null],
  ])('%d gives %s', (typed, frames) => {
    const told: Diagnostic[] = [];
    const span = { file: 'this.cut', start: 0, end: 1 };
    expect(bindOn(typed, span, (one) => void told.push(one))).toBe(frames);
    expect(told.map(({ code }) => code)).toEqual(frames === null ? ['on-range'] : []);
  });
});

const span = (start: number, end: number) => ({ file: 'this.cut', start, end });

function bound(chart: Chart) {
  const told: Diagnostic[] = [];
  const made = bindChart(chart, (one) => void told.push(one));
  return { made, codes: told.map(({ code }) => code), told };
}
const named = (name: string) => bound({ form: 'named', name, span: span(3, 9) });
const fractions = (...values: number[]) =>
  bound({
    form: 'fractions',
    fractions: values.map((value, i) => ({ value, span: span(4 + i, 5 + i) })),
    span: span(3, 20),
  });

describe('a chart with a name', () => {
  test.each(['even', 'early', 'late', 'both'])('%s', (name) => {
    expect(named(name)).toMatchObject({ made: { form: name, span: span(3, 9) }, codes: [] });
  });

  test('that is misspelt is told of, and mended', () => {
    const { made, told } = named('laet');
    expect(made).toBeNull();
    expect(told).toMatchObject([
      { code: 'unknown-chart', span: span(3, 9), fix: { edits: [{ text: '{late}', span: span(3, 9) }] } },
    ]);
  });

  test('that is near none has no fix', () => {
    const { made, told } = named('sideways');
    expect(made).toBeNull();
    expect(told[0]).toMatchObject({ code: 'unknown-chart' });
    expect(told[0]!.fix).toBeUndefined();
  });
});

describe('a chart of fractions', () => {
  test('rises between the keys', () => {
    expect(fractions(0.125, 0.5, 0.875)).toMatchObject({
      made: { form: 'fractions', fractions: [0.125, 0.5, 0.875], span: span(3, 20) },
      codes: [],
    });
  });

  test.each([0, 1, -0.5, 1.5, Number.NaN])('does not hold %d', (value) => {
    expect(fractions(value)).toMatchObject({ made: null, codes: ['chart-outside'] });
  });

  test.each([
    [0.5, 0.5],
    [0.5, 0.25],
  ])('does not hold %d before %d: it is told of the second', (first, second) => {
    const { made, told } = fractions(first, second);
    expect(made).toBeNull();
    expect(told).toMatchObject([{ code: 'chart-not-rising', span: span(5, 6) }]);
  });
});

describe('what is said of the items of a timeline, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a place in a group',
      'time 1+0\nA: (1 @3 2)..',
      ['error «@3» An `@` stands for a row of the sheet, so it cannot stand in a group or a phrase.'],
    ],
    [
      'a group of nothing but a frame count',
      'time 1+0\nA: (on 2) 1..',
      ['error «(on 2)» This group shows nothing.'],
    ],
    [
      'a group of something open',
      'time 1+0\nA: (1..)*2',
      [
        'error «(1..)*2» What this repeats ends in `..`, which goes on to the end; give its last item a length instead.',
      ],
    ],
    ['a group of something open played once', 'time 1+0\nA: (1..)', []],
    [
      'something behind what goes on',
      'time 1+0\nA: 1.. 2..',
      ['error «2..» After `..` only an `@` may follow, which says until when it goes on.'],
    ],
    [
      'a length and two dots',
      'time 1+0\nA: 1:4..',
      ['error «..» A length and `..` say two different things; keep one of them.'],
    ],
    [
      'a length of nothing',
      'time 1+0\nA: 1:0 2..',
      ['error «0» Nothing can be shown for no frames; the shortest is 1.'],
    ],
    [
      'a group of no times',
      'time 1+0\nA: (1 2)*0 3..',
      ['error «*0» Zero times shows nothing; take it out or say how many times.'],
    ],
    [
      'a group of no frames',
      'time 1+0\nA: (1 2):0 3..',
      ['error «:0» Nothing can be shown for no frames; the shortest is 1.'],
    ],
    ['a phrase that is not there', 'time 1+0\nA: walk..', ['error «walk..» There is no phrase `walk`.']],
    [
      'a phrase with a name that is nearly right',
      'time 1+0\nphrase walk = 1-2\nA: wlk..\nB: walk..',
      ['error «wlk..» There is no phrase `wlk`; did you mean `walk`?', ' > write `walk`: «wlk» → «walk»'],
    ],
    [
      'a phrase that plays itself',
      'time 1+0\nphrase a = b 1\nphrase b = a 2\nA: a..',
      [
        'error «a» A phrase cannot play itself: `a` → `b` → `a`.',
        ' + «a» phrase `a` is here',
        ' + «b» phrase `b` is here',
      ],
    ],
    [
      'a phrase that nobody plays',
      'time 1+0\nphrase walk = 1-2\nA: 1..',
      ['hint «walk» Nothing plays phrase `walk`.'],
    ],
    [
      'a phrase that only an unused one plays',
      'time 1+0\nphrase a = b 1\nphrase b = 2\nA: 1..',
      ['hint «a» Nothing plays phrase `a`.'],
    ],
    [
      'a phrase of nothing but a frame count',
      'time 1+0\nphrase a = on 2\nA: a 1..',
      ['error «a» Phrase `a` shows nothing.'],
    ],
    [
      'an unused phrase with a fault',
      'time 1+0\nphrase a = 1:0 2\nA: 1..',
      [
        'hint «a» Nothing plays phrase `a`.',
        'error «0» Nothing can be shown for no frames; the shortest is 1.',
      ],
    ],
    [
      'on nothing in a timeline',
      'time 1+0\nA: on 0 1..',
      ['error «on 0» `on` takes a whole number of frames from 1 to 240.'],
    ],
    [
      'a chart whose name is a word of the trade',
      'time 1+0\nA: 1{後ヅメ}--2..',
      [
        'error «{後ヅメ}» There is no chart `後ヅメ`; did you mean `late`?',
        ' > write `late`: «{後ヅメ}» → «{late}»',
      ],
    ],
    [
      'a chart that nobody knows',
      'time 1+0\nA: 1{qqqqqqq}--2..',
      [
        'error «{qqqqqqq}» There is no chart `qqqqqqq`; it is one of `even`, `early`, `late`, `both`, or fractions.',
      ],
    ],
    [
      'a group of too many times',
      'time 1+0\nA: (1 2)*9999999999999999 3..',
      ['error «9999999999999999» `9999999999999999` is too large a number.'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('direct, in full', () => {
  test.each<[string, string, string[]]>([
    ['between two keys', 'time 1+0\nA: 1 direct 2..', []],
    ['between keys with lengths and places', 'time 1+0\nA: 1:4 direct on 3 @5 2..', []],
    [
      'before an in-between',
      'time 1+0\nA: 1 direct --2..',
      ['error «direct» `direct` stands between two different keys, as in `1 direct 2`.'],
    ],
    [
      'behind an in-between',
      'time 1+0\nA: 1- direct 2..',
      ['error «direct» `direct` stands between two different keys, as in `1 direct 2`.'],
    ],
    [
      'at the end',
      'time 1+0\nA: 1 2 direct',
      [
        'error «2» Level A shows 4 of 24 frames: 20 frames missing, from frame 5 on.',
        ' > hold it until there: «» → «..»',
        'error «direct» `direct` stands between two different keys, as in `1 direct 2`.',
      ],
    ],
    [
      'at the beginning',
      'time 1+0\nA: direct 1..',
      ['error «direct» `direct` stands between two different keys, as in `1 direct 2`.'],
    ],
    [
      'between a key and itself',
      'time 1+0\nA: 1 direct 1..',
      ['error «direct» `direct` stands between two different keys, as in `1 direct 2`.'],
    ],
    ['in a group', 'time 1+0\nA: (1 direct 2)..', []],
    [
      'between a key and a group',
      'time 1+0\nA: 1 direct (2 3)..',
      ['error «direct» `direct` stands between two different keys, as in `1 direct 2`.'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

test.each([
  ['1 direct 2..', ['1>2']],
  ['1:4 direct on 3 @5 2..', ['1>2']],
  ['1 direct --2..', []],
  ['1 direct 1..', []],
  ['(1 direct 2 3)..', ['1>2']],
  ['walk 3 direct 4..', ['5>6', '3>4']],
])('direct in %s is kept with its keys', (items, expected) => {
  const { shot } = withLines('phrase walk = 5 direct 6', `B: ${items}`);
  const level = shot!.levels.find(({ name }) => name === 'B')!;
  expect(level.timeline!.direct.map(({ from, to }) => `${from}>${to}`)).toEqual(expected);
});
