import { describe, expect, test } from 'vitest';
import { bare, readOne, told } from '../read-text.js';

describe('a pan and a slide', () => {
  test('may pass places without a frame, before one that has its frame', () => {
    const { legs, options } = readOne('pan', 'pan A@1 > B > C > D@9 ease 2 > E@12 curved');
    expect(legs.map(({ passing }) => passing.map((place) => ('text' in place ? place.text : null)))).toEqual([
      ['B', 'C'],
      [],
    ]);
    expect(options.curved).not.toBeNull();
    expect(readOne('slide', 'slide A ア(0,0)@1 > イ(-3,-4) > (9,9)@9 curved').legs[0]!.passing).toMatchObject(
      [{ label: { text: 'イ' }, xMm: -3, yMm: -4 }],
    );
  });
});

describe('a pan that graduations lead', () => {
  test('has a direction and graduations, with or without a frame', () => {
    const { legs } = readOne('pan', 'pan A@1 > B right steps 1 2*3 graduated > C@9 > D@12 30deg steps 4');
    expect(legs.map(({ passing }) => passing)).toEqual([[], [], []]);
    expect(bare(legs)).toMatchObject([
      { to: { value: { text: 'B' }, at: null }, towards: { form: 'word', word: 'right' } },
      { to: { value: { text: 'C' }, at: {} }, spacing: [] },
      { towards: { form: 'angle', degrees: 30 }, spacing: [{ form: 'steps' }] },
    ]);
    expect(legs[1]).not.toHaveProperty('towards');
  });

  test('cannot do without either', () => {
    const message = (text: string) => told(text)[0]!.message;
    expect(message('pan A@1 > B steps 1 2')).toMatch(/`steps` does not fit here, where a direction/);
    expect(message('pan A@1 > B right')).toMatch(/`steps` should follow `right`/);
    expect(message('pan A@1 > B right ease 4')).toMatch(
      /`ease` does not fit here, where `steps` should stand/,
    );
  });

  test('may go between fields that are called like its words', () => {
    const { legs } = readOne('pan', 'pan right@1 > steps > up@9 curved');
    expect(legs[0]).toMatchObject({ passing: [{ text: 'steps' }], to: { value: { text: 'up' } } });
  });
});

describe('a truck', () => {
  test('is of the camera, or of levels', () => {
    expect(bare(readOne('truck', 'truck A@1 > B@9'))).toMatchObject({ levels: [], parts: {} });
    expect(bare(readOne('levelTruck', 'truck level A,B 100%@1 > 140%@9'))).toMatchObject({
      levels: [{ text: 'A' }, { text: 'B' }],
      from: { value: { value: 100 } },
      legs: [{ to: { value: { value: 140 } } }],
    });
  });

  test('of levels and turns may have marks, as slides have', () => {
    expect(bare(readOne('levelTruck', 'truck level A ア(100%)@1 > 140%@9'))).toMatchObject({
      from: { value: { label: { text: 'ア' }, value: 100 } },
      legs: [{ to: { value: { label: null, value: 140 } } }],
    });
    expect(bare(readOne('turn', 'turn level A M(0)@1 > N(-30deg)@9 cw'))).toMatchObject({
      from: { value: { label: { text: 'M' }, value: 0 } },
      legs: [{ to: { value: { label: { text: 'N' }, value: -30 } } }],
    });
    for (const wrong of ['ア(100)@1', 'ア(100%@1', 'ア100%@1', 'ア@1'])
      expect(
        told(`cut 1\ntime 1+0\nA: 1..\ntruck level A ${wrong} > 140%@9\n`).length,
        wrong,
      ).toBeGreaterThan(0);
  });

  test('may go from a field that is called level or quick', () => {
    expect(bare(readOne('truck', 'truck level@1 > B@9').from)).toMatchObject({ value: { text: 'level' } });
    expect(bare(readOne('truck', 'truck quick@1 > B@9'))).toMatchObject({
      parts: {},
      from: { value: { text: 'quick' } },
    });
  });

  test('may be quick, but not of a level', () => {
    expect(readOne('truck', 'truck quick A@1 > B@9 fair ア@3 60%').parts.quick).toEqual({
      file: 'this.cut',
      start: 6,
      end: 11,
    });
    expect(told('truck quick level A 100%@1 > 140%@9')).toMatchObject([
      { code: 'quick-level', at: 'quick', mended: 'truck level A 100%@1 > 140%@9' },
    ]);
  });
});

describe('a pull', () => {
  const parts = (text: string) => bare(readOne('pull', `pull BG ${text} 1..9`).parts);

  test('goes in a direction of the screen', () => {
    expect(parts('left 9mm')).toMatchObject({ direction: { form: 'word', word: 'left' } });
    expect(parts('30deg 9mm')).toMatchObject({ direction: { form: 'angle', degrees: 30 } });
  });

  test('goes by a rate or a distance', () => {
    expect(parts('left 2mm/f')).toMatchObject({ way: { form: 'rate', mm: 2 } });
    expect(parts('left 0.5cm/f')).toMatchObject({ way: { form: 'rate', mm: 5 } });
    expect(parts('left 24cm')).toMatchObject({ way: { form: 'distance', mm: 240 } });
    expect(parts('left 2.5')).toMatchObject({ way: { form: 'distance', mm: 2.5 } });
  });
});

test('places of a slide may have marks', () => {
  const slide = bare(readOne('slide', 'slide A (1,-2)@1 > エ(-120,0)@9'));
  expect(slide).toMatchObject({
    from: { value: { label: null, xMm: 1, yMm: -2 } },
    legs: [{ to: { value: { label: { text: 'エ' }, xMm: -120, yMm: 0 } } }],
  });
});

test('angles of a turn may be negative, nought has no sign', () => {
  const value = (text: string) => readOne('turn', `turn level A ${text}@1 > 9@9 cw`).from!.value;
  expect(value('-30')).toMatchObject({ value: -30 });
  expect(Object.is((value('-0') as { value: number }).value, 0)).toBe(true);
});

test('a shake has one size or two, a sway a size and a period', () => {
  expect(bare(readOne('shake', 'shake 4mm>0mm 1..9').parts)).toEqual({
    size: { value: 4 },
    lastSize: { value: 0 },
  });
  expect(bare(readOne('shake', 'shake 4mm 1..9').parts)).toEqual({ size: { value: 4 } });
  expect(bare(readOne('sway', 'sway A 5mm 1..9 every 1+12').parts)).toMatchObject({
    size: { value: 5 },
    every: { seconds: 1, frames: 12 },
  });
});
