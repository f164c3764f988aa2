import { expect, test } from 'vitest';
import type { ChangeOf, MoveSeen } from '../../src/compare/change.js';
import { moveName, parameterText } from '../../src/compare/move-change-wording.js';
import { wordsOf } from '../../src/words/words.js';

const seen = (more: Partial<MoveSeen> & Pick<MoveSeen, 'move'>): MoveSeen => ({
  levels: [],
  places: [],
  sense: null,
  quick: false,
  ...more,
});
const en = wordsOf({ labels: 'en', convention: 'japan' });
const ja = wordsOf({ labels: 'ja', convention: 'japan' });

test('a move is called by its levels, its word and its way', () => {
  const truck = seen({ move: 'truck', places: ['P', 'Q'], sense: 'in', quick: true });
  expect(moveName(truck, en.moves)).toBe('Q.T.U P→Q');
  expect(moveName({ ...truck, sense: null, quick: false }, en.moves)).toBe('T.U/T.B P→Q');
  const level = seen({ move: 'levelTruck', levels: ['A', 'B'], places: ['100%', '140%'], sense: 'out' });
  expect(moveName(level, en.moves)).toBe('A,B layer T.B 100%→140%');
  expect(moveName(level, ja.moves)).toBe('A,B セルT.B 100%→140%');
  expect(moveName(seen({ move: 'shake' }), ja.moves)).toBe('画面動');
});

test('values have their units, and nothing is told as such', () => {
  const text = (move: MoveSeen['move'], manner: string, value: string | number | boolean | null) =>
    parameterText({ move, manner } as ChangeOf<'move-manner'>, value, en.moves, (frames) => `0+${frames}`);
  expect(text('shake', 'size', '4>0')).toBe('4 to 0 mm');
  expect(text('roll', 'size', '5')).toBe('5 mm');
  expect(text('roll', 'period', 36)).toBe('every 0+36');
  expect(text('pull', 'loop', 420)).toBe('loop of 420 mm');
  expect(text('pull', 'loop', null)).toBe('no loop');
  expect(text('pull', 'direction', 'left')).toBe('to the left');
  expect(text('pull', 'direction', '30°')).toBe('30°');
  expect(text('turn', 'about', '10,20')).toBe('about 10,20');
  expect(text('turn', 'sense', 'ccw')).toBe('counter-clockwise');
  expect(text('roll', 'sideways', false)).toBe('up and down');
});
