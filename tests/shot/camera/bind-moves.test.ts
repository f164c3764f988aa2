import { describe, expect, it, test } from 'vitest';
import type { CameraStatement, MoveStatement } from '../../../src/language/tree-camera.js';
import type { MoveOf } from '../../../src/shot/camera/camera-model.js';
import { solve } from '../../../src/solve/solve-shot.js';
import { explained } from '../../explained.js';
import { bindText, withLines } from '../bind.js';
import {
  bound,
  during,
  ease,
  FULL,
  field,
  frame,
  length,
  move,
  number,
  OPTIONS,
  span,
  stop,
  to,
  word,
  words,
} from './nodes.js';

const unmarked = (value: number) => ({ ...number(value), label: null });
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
const fair = (at: number, share: number) =>
  ({ form: 'fair', mark: word('ア'), at: frame(at), share: number(share), span: span() }) as const;

describe('moves', () => {
  const A = field('A', FULL, { form: 'mm', xMm: 5, yMm: 0 });
  const first = <
    K extends MoveOf<'pan'>['kind'] | 'pull' | 'turn' | 'truck' | 'sway' | 'shake' | 'levelTruck' | 'slide',
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
        from: stop(unmarked(0), 1),
        legs: [to(unmarked(90), 24)],
        options: { ...OPTIONS, sense: sense && { sense, span: span() } },
      });
    expect(first<'turn'>(turn('cw')).legs[0]!.to.value).toBe(90);
    expect(first<'turn'>(turn('ccw')).legs[0]).toMatchObject({ from: { value: 0 }, to: { value: -90 } });
    expect(first<'turn'>(turn('cw')).parameters.sense).toEqual({ positive: 'cw', onward: true });
    expect(first<'turn'>(turn('ccw')).parameters.sense).toEqual({ positive: 'ccw', onward: true });
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
      from: stop(unmarked(100), 1),
      legs: [to(unmarked(140), 24)],
      options: { ...OPTIONS, about: { xMm: 10, yMm: 20, span: span() } },
    });
    expect(first<'levelTruck'>(scaled)).toMatchObject({
      target: { camera: false, levels: ['A'] },
      legs: [{ from: { label: '', value: 1 }, to: { label: '', value: 1.4 } }],
      parameters: { ratios: false, about: { xMm: 10, yMm: 20 } },
    });
    const sway = move({
      kind: 'sway',
      levels: words('A'),
      parts: { size: number(5), every: length(36) },
      range: during(1, 48),
    });
    expect(first<'sway'>(sway)).toMatchObject({
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

  it('pass places without a frame, on a curved way alone, that has three places', () => {
    const full = { form: 'full' } as const;
    const fields = [field('P', full), field('Q', full)];
    const going = (curved: boolean, ...legs: MoveStatement['legs']) =>
      bound([
        ...fields,
        move({
          kind: 'pan',
          from: stop(word('full'), 1),
          legs,
          options: { ...OPTIONS, curved: curved ? span() : null },
        }),
      ]);
    const passing = { ...to(word('Q'), 24), passing: [word('P')] };
    const { camera, codes } = going(true, passing);
    expect(codes).toEqual([]);
    expect(camera.moves[0]!.legs[0]).toMatchObject({ passing: [{ name: 'P' }], to: { name: 'Q' } });
    expect(camera.fields.map(({ name }) => name)).toEqual(['full', 'P', 'Q']);
    expect(going(false, passing).codes).toContain('place-passed');
    expect(going(true, to(word('Q'), 24)).codes).toContain('curve-straight');
    expect(going(true, to(word('P'), 12), to(word('Q'), 24)).codes).toEqual([]);
    expect(going(true, { ...to(word('Q'), 24), passing: [word('Z')] }).codes).toContain('unknown-field');
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

describe('a move that cannot be had whole', () => {
  it.each([
    ['a field that is not there', 'pan full@1 > B@9', 'error unknown-field'],
    ['a mark that is not there', 'pan full@1 > full@hit', 'error unknown-mark'],
    ['no level that is there', 'pull Q up 9mm 1..9', 'error unknown-level'],
    ['a range that runs backwards', 'pull A up 9mm 9..1', 'error range-backwards'],
  ])('%s is left out', (_, line, code) => {
    const { shot, codes } = withLines(line);
    expect(codes).toEqual([code]);
    expect(shot!.camera.moves).toEqual([]);
  });

  it('tells of all that is wrong in one run', () => {
    expect(withLines('pan B@1 > C@hit').codes).toEqual([
      'error unknown-field',
      'error unknown-field',
      'error unknown-mark',
    ]);
  });
});

it('a leg reaches from its first place to what is said of its spacing', () => {
  const line = 'pan full@1 > full@9 ease 2 > full@20';
  const text = `cut 1\ntime 5+0\nA: 1..\n${line}\n`;
  const [move] = bindText(text).shot!.camera.moves;
  expect(move!.legs.map(({ span: { start, end } }) => text.slice(start, end))).toEqual([
    'full@1 > full@9 ease 2',
    'full@9 ease 2 > full@20',
  ]);
});

it('a shake is spread by nothing: what would is told', () => {
  expect(withLines('shake 3mm 1..9 ease 2').codes).toEqual(['error option-misplaced']);
});

describe('graduations that lead to a field', () => {
  const solved = (...lines: string[]) => solve(withLines('level A free', ...lines).shot!);
  const problems = (...lines: string[]) => solved(...lines).diagnostics.map(({ code }) => code);
  const goal = (...lines: string[]) =>
    withLines(...lines).shot!.camera.fields.find(({ name }) => name === 'B');

  it('put the camera where their running sum is on each frame', () => {
    const steps = [1, 2, 4, 8, 8, 8, 4, 2.5, 1];
    const { frames } = solved('field A full at 5,3', 'pan A@4 > B left steps 1 2 4 8*3 4 2.5 1').camera;
    let xMm = 5;
    for (const frame of [1, 2, 3, 4]) expect(frames[frame - 1]!.x).toBe(xMm);
    steps.forEach((step, i) => {
      xMm -= step;
      expect(frames[4 + i]!.x, `frame ${5 + i}`).toBeCloseTo(xMm, 9);
      expect(frames[4 + i]!.y).toBeCloseTo(3, 9);
    });
    // 1 + 2 + 4 + 24 + 4 + 2.5 + 1 = 38.5, and at rest from then on.
    expect(frames.at(-1)!.x).toBeCloseTo(-33.5, 9);
  });

  it('are the same move as one to a field with a statement', () => {
    const drawn = solved('pan full@3 > B up steps 2 5 3');
    const typed = solved('field B full at 0,10', 'pan full@3 > B@6 steps 2 5 3');
    expect(drawn.diagnostics).toEqual([]);
    expect(drawn.camera.frames).toEqual(typed.camera.frames);
    expect(drawn.camera.moves[0]!.graduations).toEqual(typed.camera.moves[0]!.graduations);
  });

  it('end on a field of the same size and turn, from whose own right angles count', () => {
    const R = 'field R 80% at 1,2 cw 30';
    // 30 degrees counter-clockwise of a field turned 30 clockwise: to the right on the artwork.
    expect(goal(R, 'pan R@1 > B 30deg steps 10 2')).toMatchObject({ xMm: 13, yMm: 2, turnDeg: 30 });
    expect(goal(R, 'pan R@1 > B 30deg steps 10 2')!.widthMm).toBe(
      withLines(R, 'fix R').shot!.camera.rest.widthMm,
    );
    const down = goal(R, 'pan R@1 > B down steps 4')!;
    expect(down.xMm).toBeCloseTo(1 - 2, 6);
    expect(down.yMm).toBeCloseTo(2 - 4 * Math.sqrt(0.75), 6);
  });

  it('lead on: by further legs, and by moves that begin there, wherever these stand in the text', () => {
    const legs = withLines('pan full@1 > C right steps 1 2 > B up steps 3 4 5 > full@30').shot!.camera
      .moves[0]!.legs;
    expect(legs.map(({ start, end }) => [start, end])).toEqual([
      [1, 3],
      [3, 6],
      [6, 30],
    ]);
    expect(legs[1]).toMatchObject({ from: { xMm: 3, yMm: 0 }, to: { xMm: 3, yMm: 12 } });
    const later = withLines('pan B@40 > full@60', 'pan full@1 > B right steps 4 5');
    expect(later.codes).toEqual([]);
    expect(later.shot!.camera.moves[1]!.legs[0]).toMatchObject({ from: { xMm: 9 } });
  });

  it('fit a frame that is typed with them, or are counted', () => {
    expect(problems('pan full@1 > B@4 right steps 1 2 4')).toEqual([]);
    expect(problems('pan full@1 > B@9 right steps 1 2 4')).toEqual(['steps-count']);
    expect(problems('pan full@1 > B right steps 1*200')).toEqual(['move-past-end']);
  });

  it('make a field that has no other place, and begin on one that is known', () => {
    const codes = (...lines: string[]) => withLines(...lines).codes;
    expect(codes('pan full@1 > B right steps 1', 'field B full')).toEqual(['error name-twice']);
    expect(codes('pan full@1 > B right steps 1', 'pan B@9 > B up steps 1')).toEqual(['error name-twice']);
    expect(codes('field A full at 9,0', 'pan A@1 > full right steps 1')).toEqual(['error field-full']);
    expect(codes('pan Q@1 > B right steps 1', 'pan B@9 > full@12')).toEqual(['error unknown-field']);
    expect(codes('pan C@1 > B right steps 1', 'pan B@9 > C up steps 1')).toContain('error unknown-field');
  });

  it('follow each other in any number, however they are ordered', () => {
    const chain = Array.from({ length: 5000 }, (_, i) => {
      const from = i === 0 ? 'full' : `F${i}`;
      return `pan ${from}@${1 + i} > F${i + 1} right steps ${(i % 3) + 1}`;
    }).reverse();
    const { fields } = withLines(...chain).shot!.camera;
    // 1666 times 1 + 2 + 3, and 1 + 2.
    expect(fields.find(({ name }) => name === 'F5000')!.xMm).toBeCloseTo(9999, 6);
  });
});

describe('what is said of a move, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a number of frames that no drawing stays',
      'time 1+0\npull BG right 1mm/f 1..12 on 0',
      ['error «0» `on` takes a whole number of frames from 1 to 240.'],
    ],
    [
      'an option that says nothing of a shake',
      'time 1+0\nshake 3mm 1..12 carry BG graduated log',
      [
        'error «BG» `carry` has no meaning for a shake.',
        'error «graduated» `graduated` has no meaning for a shake.',
        'error «log» `log` has no meaning for a shake.',
      ],
    ],
    [
      'options that say nothing of a pan',
      'time 1+0\nfield P full at 5,0\npan full@1 > P@24 sideways loop 100mm about 0,0',
      [
        'error «sideways» `sideways` has no meaning for a pan.',
        'error «100mm» `loop` has no meaning for a pan.',
        'error «0,0» `about` has no meaning for a pan.',
      ],
    ],
    [
      'spacing of a swing',
      'time 1+0\nshake 3mm 1..12 ease 3',
      ['error «ease 3» `ease` has no meaning for a shake.'],
    ],
    [
      'a sense that says nothing',
      'time 1+0\npull BG right 1mm/f 1..12 cw',
      ['error «cw» `cw` has no meaning for a pull.'],
    ],
    [
      'spacing that is said twice',
      'time 1+0\npull BG right 1mm/f 1..12 ease 3 curve 0.1 0 0.1 1',
      [
        'error «curve 0.1 0 0.1 1» The distance of this leg is spread twice; take one of the two out.',
        ' + «ease 3» it is spread here already',
      ],
    ],
    [
      'a field that is not there, and a time that is not',
      'time 1+0\nfield P full at 5,0\npan full@1 > Q@mark1',
      [
        'error «Q» There is no field `Q`; say what it is with `field`.',
        'error «mark1» There is no mark `mark1`; say where it is with `mark`.',
      ],
    ],
    [
      'a field with a name that is nearly right',
      'time 1+0\nfield Part full at 5,0\npan full@1 > Parst@24',
      ['error «Parst» There is no field `Parst`; did you mean `Part`?', ' > write `Part`: «Parst» → «Part»'],
    ],
    [
      'a field that two things place',
      'time 1+0\nfield P full at 5,0\npan full@1 > P right steps 1 2 3',
      [
        'error «full@1 > P right steps 1 2 3» The graduations add up to 6 mm, but the distance is 5 mm; they must agree within 0.05 mm.',
        ' > put field P at 6,0, where the graduations end: «5,0» → «6,0»',
        'error «P» There are two of field `P`.',
        ' + «P» the other one is here',
      ],
    ],
    [
      'full as a goal',
      'time 1+0\npan full@1 > full right steps 1 2 3',
      [
        'error «full@1 > full right steps 1 2 3» The graduations add up to 6 mm, but the distance is 0 mm; they must agree within 0.05 mm.',
        'error «full» The name `full` always means the standard field; give this field another name.',
      ],
    ],
    [
      'a place that is passed on a straight way',
      'time 1+0\nfield P full at 5,0\nfield Q full at 9,5\npan full@1 > P > Q@24',
      [
        'error «P» This place has no frame. Give it one with `@`, or make the way `curved`: then it is passed when the way gets there.',
        ' > write `curved`: «» → « curved»',
      ],
    ],
    [
      'a curve of one straight leg',
      'time 1+0\nfield P full at 5,0\npan full@1 > P@24 curved',
      [
        'error «curved» Between two places the way is straight; `curved` needs a third one.',
        ' > leave it out: «curved» → «»',
      ],
    ],
    [
      'a curve of two legs',
      'time 2+0\nfield P full at 5,0\nfield Q full at 9,5\npan full@1 > P@24 > Q@48 curved',
      [],
    ],
    ['a range without an end', 'time 1+0\nlevel BG free\npull BG right 1mm/f 13..', []],
    [
      'a turn without a sense',
      'time 1+0\nA: 1..\nturn level A 0@1 > 10@24',
      [
        'error «turn level A 0@1 > 10@24» A turn says which way it goes: `cw` (clockwise) or `ccw`.',
        ' > turn it clockwise: «» → « cw»',
      ],
    ],
    ['a turn the other way', 'time 1+0\nA: 1..\nturn level A 0@1 > 10@24 ccw', []],
    [
      'a level that moves twice in a list',
      'time 1+0\nA: 1..\npull A,A right 1mm/f 1..12',
      ['warning «A» Level `A` is named twice here; once is enough.'],
    ],
    [
      'a level that is not there',
      'time 1+0\nA: 1..\npull B right 1mm/f 1..12',
      ['error «B» This cut has no level `B`.'],
    ],
    [
      'a quick truck without its mark',
      'time 1+0\nfield P 97%\ntruck quick full@1 > P@24',
      [
        'error «quick» A quick truck needs its fairing mark, with the frame and the share of the way done there: `fair イ@9 58%`.',
      ],
    ],
    [
      'a fairing mark on a truck that is not quick',
      'time 1+0\nfield P 97%\ntruck full@1 > P@24 fair X@12 60%',
      [
        'error «fair X@12 60%» A fairing mark belongs to a quick truck: `truck quick … fair …`; other moves slow down with `ease`.',
      ],
    ],
    [
      'graduations of a truck with ratios besides',
      'time 1+0\nfield P 250mm\ntruck full@1 > P@3 steps 2 2 log',
      [
        'error «log» `steps` says the width on each frame already, so `log` has nothing left to spread.',
        ' > leave it out: «log» → «»',
      ],
    ],
    [
      "graduations of a level's truck with ratios",
      'time 1+0\nA: 1..\ntruck level A 100%@1 > 110%@3 steps 2 2 log',
      [
        'hint «truck level A 100%@1 > 110%@3 steps 2 2 log» A shows as little as a field of 90.9 % would on frame 3: scanned at 200 dpi it is enlarged from 96 % down, to fill 1920 pixels.',
        ' + 212 dpi would be enough.',
        'error «100%@1 > 110%@3 steps 2 2» Graduations in mm are for what goes from place to place (pans, pulls, follows, slides) and for trucks of the camera, not for the scale or turn of a level.',
      ],
    ],
    [
      'a follow and a pan at once',
      'time 1+0\nA: 1..\nlevel A free\nfield P full at 5,0\npan full@1 > P@24\nfollow A right 1mm/f 1..12',
      [
        'error «pan full@1 > P@24» Two moves of the camera run at once, from frame 2 to frame 12.',
        ' + «follow A right 1mm/f 1..12» The other one.',
      ],
    ],
    [
      'a sway without a length',
      'time 1+0\nA: 1..\nsway A 5mm 1..24 every 0',
      [
        'error «sway A 5mm 1..24 every 0» The time of one sway in frames is 0; it must be one frame at least.',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
