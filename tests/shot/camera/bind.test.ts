import { describe, expect, it } from 'vitest';
import type { CameraStatement } from '../../../src/language/tree-camera.js';
import { handleOf } from '../../../src/shot/camera/light.js';
import type { MoveOf } from '../../../src/shot/camera.js';
import { solve } from '../../../src/solve/solve.js';
import * as nodes from './nodes.js';

const {
  bound,
  during,
  ease,
  field,
  FULL,
  frame,
  length,
  move,
  number,
  OPTIONS,
  span,
  state,
  stop,
  to,
  word,
  words,
} = nodes;

const pan = (from: string, a: number, end: string, b: number, options = OPTIONS): CameraStatement =>
  move({ kind: 'pan', from: stop(word(from), a), legs: [to(word(end), b)], options });
const truck = (legs: ReturnType<typeof to<ReturnType<typeof word>>>[], quick = false): CameraStatement =>
  move({ kind: 'truck', parts: quick ? { quick: span() } : {}, from: stop(word('full'), 1), legs });
const pull = (
  mm: number,
  form: 'rate' | 'distance',
  from: number,
  last: number | null,
  more = {},
): CameraStatement =>
  move({
    kind: 'pull',
    levels: words('BG'),
    parts: { direction: { form: 'word', word: 'left', span: span() }, way: { form, mm, span: span() } },
    range: during(from, last),
    ...more,
  });
const overlap = (way: 'in' | 'out', frames: number): CameraStatement =>
  state({ kind: 'overlap', way, length: length(frames) });
const fair = (at: number, share: number) =>
  ({ form: 'fair', mark: word('ア'), at: frame(at), share: number(share), span: span() }) as const;

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
    expect(bound([A, pan('A', 1, 'full', 24)]).camera.fields.map(({ name }) => name)).toEqual(['full', 'A']);
  });
});

describe('moves', () => {
  const A = field('A', FULL, { form: 'mm', xMm: 5, yMm: 0 });
  const first = <
    K extends MoveOf<'pan'>['kind'] | 'pull' | 'turn' | 'truck' | 'roll' | 'shake' | 'levelTruck' | 'slide',
  >(
    ...all: CameraStatement[]
  ) => bound([A, ...all]).camera.moves[0] as MoveOf<K>;

  it('with `@` rest on their first frame; ranges have moved on it', () => {
    expect(first<'pan'>(pan('full', 24, 'A', 48)).legs[0]).toMatchObject({ start: 24, end: 48 });
    expect(first<'pull'>(pull(3, 'rate', 1, 24)).legs[0]).toMatchObject({ start: 0, end: 24 });
    expect(first<'pull'>(pull(3, 'rate', 25, null)).legs[0]).toMatchObject({ start: 24, end: 48 });
  });

  it('of a rate go rate x frames; ramps take half of theirs; a distance is kept', () => {
    // 3 mm/f 1..5+0 is 360 mm; with ramps of 6 and 12 the constant speed runs for 120 - 9 frames.
    expect(first<'pull'>(pull(3, 'rate', 1, 24)).parameters.way).toEqual({ distanceMm: 72, rateMm: 3 });
    const eased = { spacing: [ease(6, 12)] };
    expect(first<'pull'>(pull(3, 'rate', 1, 24, eased)).parameters.way).toEqual({
      distanceMm: 45,
      rateMm: 3,
    });
    expect(first<'pull'>(pull(72, 'distance', 1, 24, eased)).parameters.way).toEqual({
      distanceMm: 72,
      rateMm: null,
    });
    const solved = solve(bound([pull(3, 'rate', 1, 24, eased)]).shot).camera.moves[0]!;
    expect(solved.graduations[10]!.stepMm).toBeCloseTo(3, 12);
  });

  it('chain their legs', () => {
    const legs = [to(word('A'), 24), to(word('full'), 48)];
    const chained = move({ kind: 'pan', from: stop(word('full'), 1), legs });
    expect(first<'pan'>(chained).legs.map(({ start, end, from }) => [from.name, start, end])).toEqual([
      ['full', 1, 24],
      ['A', 24, 48],
    ]);
  });

  it('turn clockwise or the other way, and must say which', () => {
    const turn = (sense: 'cw' | 'ccw' | null): CameraStatement =>
      move({
        kind: 'turn',
        levels: words('A'),
        from: stop(number(0), 1),
        legs: [to(number(90), 24)],
        options: { ...OPTIONS, sense: sense && { sense, span: span() } },
      });
    expect(first<'turn'>(turn('cw')).legs[0]!.to).toBe(90);
    expect(first<'turn'>(turn('ccw')).legs[0]).toMatchObject({ from: 0, to: -90 });
    const silent = turn(null);
    const { diagnostics } = bound([silent]);
    const end = silent.span.end;
    expect(diagnostics.find(({ code }) => code === 'turn-sense')!.fix!.edits).toEqual([
      { span: { file: 'this.cut', start: end, end }, text: ' cw' },
    ]);
  });

  it('scale in percent, sway by a period, shake evenly unless told otherwise, slide along their marks', () => {
    const scaled = move({
      kind: 'levelTruck',
      levels: words('A'),
      from: stop(number(100), 1),
      legs: [to(number(140), 24)],
      options: { ...OPTIONS, about: { xMm: 10, yMm: 20, span: span() } },
    });
    expect(first<'levelTruck'>(scaled)).toMatchObject({
      target: { camera: false, levels: ['A'] },
      legs: [{ from: 1, to: 1.4 }],
      parameters: { ratios: false, about: { xMm: 10, yMm: 20 } },
    });
    const roll = move({
      kind: 'roll',
      levels: words('A'),
      parts: { size: number(5), every: length(36) },
      range: during(1, 48),
    });
    expect(first<'roll'>(roll)).toMatchObject({
      parameters: { size: 5, period: 36, sideways: false },
      legs: [{ start: 0, end: 48 }],
    });
    const shake = move({
      kind: 'shake',
      parts: { size: number(3) },
      range: during(5, 9),
    });
    expect(first<'shake'>(shake)).toMatchObject({
      parameters: { size: { fromMm: 3, toMm: 3 } },
      legs: [{ start: 4, end: 9 }],
    });
    const mark = (label: string, xMm: number) => ({ label: word(label), xMm, yMm: 0, span: span() });
    const slide = move({
      kind: 'slide',
      levels: words('A'),
      from: stop(mark('ア', 0), 1),
      legs: [to(mark('エ', -9), 9)],
    });
    expect(first<'slide'>(slide).legs[0]!.to).toEqual({ label: 'エ', xMm: -9, yMm: 0 });
  });

  it('are quick with a fairing mark, and only then have one', () => {
    const quick = truck([to(word('S'), 24, fair(10, 60))], true);
    const S = field('S', { form: 'percent', percent: 60 });
    expect(bound([S, quick]).camera.moves[0]).toMatchObject({
      parameters: { quick: true },
      legs: [{ spacing: { form: 'fair', mark: 'ア', frame: 10, share: 0.6 } }],
    });
    expect(bound([S, truck([to(word('S'), 24)], true)]).codes).toContain('quick-without-fairing');
    expect(bound([S, truck([to(word('S'), 24, fair(10, 60))])]).codes).toContain('fairing-misplaced');
  });

  it('repeat graduations by hand as often as they are written', () => {
    const spacing = {
      form: 'steps',
      steps: [
        { mm: number(2), times: 3 },
        { mm: number(1), times: 1 },
      ],
      span: span(),
    } as const;
    expect(first<'pull'>(pull(7, 'distance', 1, 4, { spacing: [spacing] })).legs[0]!.spacing).toEqual({
      form: 'steps',
      mm: [2, 2, 2, 1],
    });
  });

  it('take only words that mean something for them', () => {
    const loop = { ...OPTIONS, loop: number(300) };
    expect(bound([A, pan('full', 1, 'A', 24, loop)]).codes).toContain('option-misplaced');
    expect(bound([pull(3, 'rate', 1, 24, { options: loop })]).codes).not.toContain('option-misplaced');
    expect(bound([pull(3, 'rate', 1, 24, { options: { ...OPTIONS, carry: words('A') } })]).codes).toContain(
      'option-misplaced',
    );
    expect(bound([pull(3, 'rate', 1, 24, { spacing: [ease(1, 1), ease(2, 2)] })]).codes).toContain(
      'spacing-twice',
    );
    expect(bound([pull(3, 'rate', 1, 24, { options: { ...OPTIONS, on: number(0) } })]).codes).toContain(
      'on-range',
    );
  });

  it('name levels that are there, each once', () => {
    expect(bound([pull(3, 'rate', 1, 24, { levels: words('Q') })]).codes).toContain('unknown-level');
    const twice = bound([pull(3, 'rate', 1, 24, { levels: words('A', 'A', 'BG') })]);
    expect(twice.codes).toContain('level-repeated');
    expect(twice.camera.moves[0]).toMatchObject({ target: { levels: ['A', 'BG'] } });
    const stacked = { text: 'cut 1\ntime 2+0\nstack A\nA: 1..\n' };
    expect(bound([pull(3, 'rate', 1, 24)], stacked).codes).toContain('unknown-level');
  });
});

describe('light', () => {
  it('has its shares from percents', () => {
    const expose = (from: number, last: number | null): CameraStatement =>
      state({
        kind: 'expose',
        levels: words('A'),
        from: number(from),
        to: last === null ? null : number(last),
        range: during(1, 24),
      });
    expect(bound([expose(0, 100)]).camera.light[0]).toMatchObject({ from: 0, to: 1 });
    expect(bound([expose(50, null)]).camera.light[0]).toMatchObject({ from: 0.5, to: 0.5 });
    expect(bound([expose(120, null)]).codes).toContain('exposure-range');
  });
});

describe('dissolves', () => {
  it('make the sheets of 4+00 and 3+00 with 1+00 between them 4+12 and 3+12', () => {
    // Handles of half the dissolve: common practice; the sum of both times stays 168 frames.
    const out = bound([overlap('out', 24)], { text: 'cut 1\ntime 4+0\nA: 1..\n' }).shot;
    const into = bound([overlap('in', 24)], { text: 'cut 2\ntime 3+0\nA: 1..\n' }).shot;
    expect([out.length, out.handles]).toEqual([4 * 24 + 12, { head: 0, tail: 12 }]);
    expect([into.length, into.handles]).toEqual([3 * 24 + 12, { head: 12, tail: 0 }]);
    expect(out.time + into.time).toBe(168);
    expect(out.camera.light[0]).toMatchObject({ frames: { from: 85, to: 108 } });
    expect(into.camera.light[0]).toMatchObject({ frames: { from: 1, to: 24 } });
  });

  it('of an odd length give the outgoing cut the smaller half', () => {
    expect([handleOf('out', 9, 'half'), handleOf('in', 9, 'half')]).toEqual([4, 5]);
  });

  it('in full add nothing: both times contain them', () => {
    // 96 + 72 - 24 = 144: common practice.
    const { shot } = bound([overlap('out', 24)], { settings: { overlap: 'full' } });
    expect([shot.length, shot.handles]).toEqual([48, { head: 0, tail: 0 }]);
  });

  it('last from two frames to the whole sheet, one at each end', () => {
    expect(bound([overlap('out', 1)]).codes).toContain('overlap-short');
    expect(bound([overlap('out', 97)]).codes).toContain('overlap-long');
    expect(bound([overlap('out', 1e12)]).codes).toContain('overlap-long');
    expect(bound([overlap('out', 12), overlap('in', 12)]).codes).not.toContain('statement-twice');
    expect(bound([overlap('out', 12), overlap('out', 12)]).codes).toContain('statement-twice');
  });
});
