import { describe, expect, it, test } from 'vitest';
import type { CameraStatement } from '../../../src/language/tree-camera.js';
import { explained } from '../../explained.js';
import { bindText, withLines } from '../bind.js';
import { bound, FULL, field, move, OPTIONS, span, state, stop, to, word } from './nodes.js';

const pan = (from: string, a: number, end: string, b: number, options = OPTIONS): CameraStatement =>
  move({ kind: 'pan', from: stop(word(from), a), legs: [to(word(end), b)], options });

describe('fields', () => {
  it('come out in millimetres, whatever they were written in', () => {
    const { camera } = bound([
      field('P', { form: 'percent', percent: 50 }, { form: 'mm', xMm: 40, yMm: -12 }),
      field('F', { form: 'chart', fields: 6 }, { form: 'chart', north: 2, east: -3 }),
      field('M', { form: 'mm', widthMm: 120 }),
    ]);
    expect(camera.fields).toMatchObject([
      { name: 'P', xMm: 40, yMm: -12, widthMm: 127, turnDeg: 0, notation: 'percent' },
      // Steps of 254/24 mm to the west, 142.875/24 mm to the north.
      { name: 'F', xMm: -31.75, yMm: 11.90625, widthMm: 127, notation: 'chart' },
      { name: 'M', xMm: 0, widthMm: 120, notation: 'mm' },
    ]);
  });

  it('use the chart that the episode has', () => {
    const eight = field('F', { form: 'chart', fields: 8 }, { form: 'chart', north: 0, east: 4 });
    const { camera } = bound([eight], { settings: { fields: 16 } });
    expect(camera.fields[0]).toMatchObject({ widthMm: 127, xMm: 31.75 });
  });

  it('are turned clockwise, counter-clockwise negative', () => {
    const turned = (sense: 'cw' | 'ccw') =>
      state({
        kind: 'field',
        name: word('T'),
        size: { form: 'full', span: span() },
        place: null,
        turned: { sense, degrees: 5, span: span() },
      });
    expect(bound([turned('cw')]).camera.fields[0]!.turnDeg).toBe(5);
    expect(bound([turned('ccw')]).camera.fields[0]!.turnDeg).toBe(-5);
  });

  it('are known, defined once, and never called full', () => {
    const A = field('Harbour', FULL);
    const { diagnostics } = bound([A, pan('Harbour', 1, 'Harbor', 9)]);
    expect(diagnostics.find(({ code }) => code === 'unknown-field')!.fix!.edits[0]!.text).toBe('Harbour');
    expect(bound([A, field('Harbour', FULL)]).codes).toContain('name-twice');
    expect(bound([field('full', { form: 'percent', percent: 60 })]).codes).toContain('field-full');
    const chart = field('C', { form: 'chart', fields: 8 });
    expect(bound([chart, field('P', { form: 'percent', percent: 60 })]).codes).toContain('field-measures');
    expect(bound([chart, field('D', { form: 'chart', fields: 9 })]).codes).not.toContain('field-measures');
  });
});

describe('percent and chart notation', () => {
  const twice = (a: string, b: string) => withLines(`field A ${a}`, `field B ${b}`, 'pan A@1 > B@9').codes;

  it('in one cut are two measures for one thing', () => {
    expect(twice('60%', '8F')).toContain('hint field-measures');
    expect(twice('60%', '70%')).not.toContain('hint field-measures');
    expect(twice('60%', '120mm')).not.toContain('hint field-measures');
    expect(twice('full', '8F')).not.toContain('hint field-measures');
  });
});

describe('a field of that name', () => {
  it('of a used file is taken where the cut has none', () => {
    const house = 'field B 50% at 40,0\n';
    const of = (own: string) =>
      bindText(`cut 1\ntime 5+0\nA: 1..\n${own}truck full@1 > B@9\n`, [house]).shot!.camera.fields;
    expect(of('')).toMatchObject([{ name: 'full' }, { name: 'B', widthMm: 127 }]);
    expect(of('field B 25%\n')).toMatchObject([{ name: 'full' }, { name: 'B', widthMm: 63.5, xMm: 0 }]);
  });

  it('that an unreadable statement began is not called unknown', () => {
    expect(withLines('field B 50% at ???', 'fix B').codes).toEqual([]);
  });
});

describe('finish camera', () => {
  const pan = (from: string, a: number, end: string, b: number, options = OPTIONS): CameraStatement =>
    move({ kind: 'pan', from: stop(word(from), a), legs: [to(word(end), b)], options });

  describe('the camera rests', () => {
    const A = field('A', FULL, { form: 'mm', xMm: 5, yMm: 0 });
    const rest = (...more: CameraStatement[]) => bound([A, ...more]).camera.rest.name;
    it('on the standard field, on that of `fix`, or where its first move starts', () => {
      expect(rest()).toBe('full');
      expect(rest(state({ kind: 'fix', field: word('A') }))).toBe('A');
      expect(rest(pan('full', 24, 'A', 48), pan('A', 1, 'full', 24))).toBe('A');
    });

    it('and `full` is among its fields only where something names it', () => {
      expect(bound([A]).camera.fields.map(({ name }) => name)).toEqual(['A']);
      expect(bound([A, pan('A', 1, 'full', 24)]).camera.fields.map(({ name }) => name)).toEqual([
        'full',
        'A',
      ]);
    });
  });

  describe('fields', () => {
    it('stand in the order of writing, the standard field first, those of used files last', () => {
      const house = 'field Y 50%\nfield X 50%\nfield Z 50%\n';
      const lines = 'field B 60%\nfield A 60%\ntruck Y@1 > B@9 > X@20 > full@30 > A@40\n';
      const { camera } = bindText(`cut 1\ntime 5+0\nA: 1..\n${lines}`, [house]).shot!;
      expect(camera.fields.map(({ name }) => name)).toEqual(['full', 'B', 'A', 'X', 'Y']);
    });
  });

  it('moves and light stand in the order of their first frames', () => {
    const { camera } = withLines('shake 3mm 40..50', 'pull A up 9mm 1..9', 'glow A 30..40', 'fade in 1..9')
      .shot!;
    expect(camera.moves.map(({ kind }) => kind)).toEqual(['pull', 'shake']);
    expect(camera.light.map(({ kind }) => kind)).toEqual(['fade', 'glow']);
  });
});

describe('what is said of a field, in full', () => {
  test.each<[string, string, string[]]>([
    [
      "a field of the standard one's name",
      'time 1+0\nfield full 90%',
      ['error «full» The name `full` always means the standard field; give this field another name.'],
    ],
    [
      'two measures for one thing',
      'time 1+0\nfield P 98%\nfield Q 11F',
      [
        'hint «11F» Field `Q` is given in lines of the field chart, and field `P` in percent; are both meant so?',
        ' + «98%» the other one is here',
      ],
    ],
    ['chart and mm together', 'time 1+0\nfield P 11F\nfield Q 250mm\nfield R full', []],
    [
      'a field that is said twice',
      'time 1+0\nfield P 98%\nfield P 97%',
      ['error «field P 97%» There are two of field `P`.', ' + «field P 98%» the first is here'],
    ],
    [
      'a fixed field that is not there',
      'time 1+0\nfield Part 98%\nfix Prt',
      ['error «Prt» There is no field `Prt`; did you mean `Part`?', ' > write `Part`: «Prt» → «Part»'],
    ],
    [
      'two fixed fields',
      'time 1+0\nfield P 98%\nfix P\nfix P',
      ['error «fix P» `fix` is said twice.', ' + «fix P» the first is here'],
    ],
    [
      'goals that lead to each other',
      'time 1+0\npan P@1 > Q right steps 1 2\npan Q@5 > P right steps 1 2',
      [
        'error «P» There is no field `P`; say what it is with `field`.',
        'error «Q» There is no field `Q`; say what it is with `field`.',
        'error «Q» There is no field `Q`; say what it is with `field`.',
        'error «P» There is no field `P`; say what it is with `field`.',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
