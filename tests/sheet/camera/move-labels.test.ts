import { describe, expect, test } from 'vitest';
import { graduated, moveKind, outlined } from '../../../src/sheet/camera/move-labels.js';
import { printedLengths } from '../../../src/sheet/printed-lengths.js';
import { parametersOf } from '../../../src/shot/camera/move-facts.js';
import { wordsOf } from '../../../src/words/words.js';
import { KINDS, moveOf, parameterNames } from '../../move-samples.js';

const tellings = (['en', 'ja'] as const).map((language) => ({
  words: wordsOf({ labels: language, convention: 'japan' }).moves,
  lengths: printedLengths({ lengths: 'mm' }),
  fieldMm: 254,
  length: (frames: number) => `0+${frames}`,
  neighbour: () => null,
}));
const [english] = tellings as unknown as [(typeof tellings)[number]];

describe.each(KINDS)('%s', (kind) => {
  test('has a name, a word and a line of the memo in both languages', () => {
    for (const telling of tellings) {
      const move = moveOf(kind, { second: parameterNames(kind) });
      const texts = [
        ...moveKind.names(move, telling),
        moveKind.short(move, telling.words),
        moveKind.memo(move, telling),
      ];
      for (const text of texts) expect(text).toMatch(/^\S(?!.*(undefined|NaN)).*$/);
    }
  });

  test('tells each parameter that is to be told', () => {
    for (const { name, parameter } of parametersOf(moveOf(kind)))
      if (parameter.told !== 'never')
        expect(moveKind.memo(moveOf(kind, { second: [name] }), english), name).not.toBe(
          moveKind.memo(moveOf(kind), english),
        );
  });
});

describe('moves are called', () => {
  const memo = (kind: (typeof KINDS)[number], second: readonly string[] = []) =>
    moveKind.memo(moveOf(kind, { second }), english);

  test('by their levels, word, way, parameters and manners', () => {
    expect(memo('pan', ['carry'])).toBe('follow PAN P→Q with A');
    expect(memo('truck', ['ratios', 'quick'])).toBe('Q.T.U P→Q equal ratios');
    expect(memo('pull', ['loop'])).toBe('A pull → 3 mm/f loop 420 mm');
    expect(memo('levelTruck')).toBe('A layer T.U 100%→140%');
    expect(memo('turn', ['sense'])).toBe('A turn 0°→90° counter-clockwise');
    expect(memo('shake', ['size', 'sideways'])).toBe('shake 5→9 mm left and right (right first)');
    expect(memo('roll', ['period'])).toBe('A sway 5 mm up and down (up first) every 0+9');
    expect(
      moveKind.memo(moveOf('slide', { on: 2, spacing: { form: 'ease', leave: 4, arrive: 6 } }), english),
    ).toBe('A slide ア→イ ease 4/6 on 2s');
  });

  test('in inches where the settings say so', () => {
    const inches = { ...english, lengths: printedLengths({ lengths: 'in' }) };
    const said = (kind: (typeof KINDS)[number]) => moveKind.memo(moveOf(kind), inches);
    expect(said('pull')).toBe('A pull → 0.118 in/f');
    expect(said('shake')).toBe('shake 0.197 in up and down (up first)');
  });

  test('beside their rows by less and less', () => {
    expect(moveKind.names(moveOf('roll'), english)).toEqual(['A sway 5 mm', 'A sway', 'A']);
    expect(moveKind.names(moveOf('pan', { second: ['carry'] }), english)).toEqual(['follow PAN', 'PAN']);
    expect(moveKind.names(moveOf('shake'), english)).toEqual(['shake 5 mm', 'shake']);
  });
});

test('graduations are numbered where they are asked for or written by hand', () => {
  expect(graduated(moveOf('pan'))).toBe(false);
  expect(graduated(moveOf('pan', { ticks: true }))).toBe(true);
  expect(graduated(moveOf('pull', { spacing: { form: 'steps', mm: [72] } }))).toBe(true);
});

test('levels that go somewhere are outlined, those that swing are not', () => {
  expect(outlined(moveOf('slide'))).toEqual(['A']);
  expect(outlined(moveOf('pan', { second: ['carry'] }))).toEqual(['A']);
  expect(outlined(moveOf('roll'))).toEqual([]);
});
