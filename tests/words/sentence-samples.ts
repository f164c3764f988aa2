/** Changes with all that a sentence needs, of which a test names what matters; times at 24 frames a second. */

import type {
  Change,
  ChangeBody,
  ChangeOf,
  LightSeen,
  MoveSeen,
  SeenThing,
  Shown,
  SpeechText,
} from '../../src/compare/change.js';
import type { ChangeSentences, SentenceFormat } from '../../src/words/change-sentences.js';

export const FORMAT: SentenceFormat = {
  length: (frames) => `${Math.floor(frames / 24)}+${frames % 24}`,
  long: (frames) => Math.abs(frames) >= 24,
  row: (frame) => `${Math.floor((frame - 1) / 24)}+${((frame - 1) % 24) + 1}`,
  brief: (text) => text,
  move: ({ places }) => `PAN ${places.join('→')}`,
  parameter: ({ manner }, value) => `${manner} ${value}`,
};

/** The sentence of a change, by the table of one language. */
export function say(
  sentences: Partial<ChangeSentences>,
  body: ChangeBody,
  rows: Change['rows'] = null,
): string {
  const sentence = sentences[body.kind] as (change: Change, t: SentenceFormat) => string;
  return sentence({ ...body, place: null, rows }, FORMAT);
}

export const EMPTY: SeenThing = { form: 'empty' };
export const key = (drawing: string, cel = Number(drawing)): SeenThing => ({
  form: 'drawing',
  drawing,
  kind: 'key',
  cel,
  way: null,
});
export const between = (drawing: string, cel: number, from: string, to: string) =>
  ({ form: 'drawing', drawing, kind: 'inbetween', cel, way: { from, to } }) as const;
export const cycle = (first: string, last: string) => ({ form: 'cycle', first, last }) as const;

/** Things shown one after the other for two frames each. */
export const shown = (seen: readonly SeenThing[], fresh = true, frames = 2): Shown[] =>
  seen.map((one, i) => ({ seen: one, from: 1 + i * frames, frames, fresh }));

type Body<K extends Change['kind']> = Omit<ChangeOf<K>, 'place' | 'rows'>;

export const exposure = (over: Partial<Body<'exposure'>> = {}): Body<'exposure'> => ({
  kind: 'exposure',
  level: 'A',
  first: key('1'),
  last: key('1'),
  count: 1,
  frames: { old: 12, now: 16 },
  from: { old: 1, now: 1 },
  inCycle: false,
  follows: null,
  ...over,
});

export const moved = (over: Partial<Body<'moved'>> = {}): Body<'moved'> => ({
  kind: 'moved',
  level: 'A',
  first: key('2'),
  last: key('2'),
  by: 6,
  from: { old: 13, now: 19 },
  toEnd: false,
  inCycle: false,
  ...over,
});

export const replaced = (over: Partial<Body<'shown'>> = {}): Body<'shown'> => ({
  kind: 'shown',
  level: 'A',
  old: [],
  now: [],
  from: { old: 9, now: 13 },
  holder: null,
  inCycle: false,
  follows: null,
  ...over,
});

export const inBetweens = (over: Partial<Body<'in-betweens'>> = {}): Body<'in-betweens'> => ({
  kind: 'in-betweens',
  level: 'A',
  from: '1',
  to: '2',
  count: { old: 2, now: 3 },
  added: [],
  dropped: [],
  frame: 3,
  holder: null,
  follows: null,
  ...over,
});

export const cycleChange = (over: Partial<Body<'cycle'>> = {}): Body<'cycle'> => ({
  kind: 'cycle',
  level: 'B',
  cycle: cycle('1', '2'),
  from: { old: 25, now: 25 },
  times: { old: 3, now: 4 },
  pass: { old: 8, now: 8 },
  frames: { old: 24, now: 32 },
  bounce: { old: false, now: false },
  what: 'times',
  follows: null,
  ...over,
});

export const MOVE: MoveSeen = { move: 'pan', levels: [], places: ['A', 'B'], sense: null, quick: false };
export const SAME_SPEED = { wayMm: { old: 100, now: 100 }, largestStepMm: { old: 4, now: 4 } };

export const moveTime = (over: Partial<Body<'move-time'>> = {}): Body<'move-time'> => ({
  kind: 'move-time',
  frames: { old: { from: 1, to: 24 }, now: { from: 1, to: 24 } },
  stops: null,
  ...SAME_SPEED,
  ...MOVE,
  ...over,
});

export const light = (over: Partial<LightSeen> & Pick<LightSeen, 'light'>): LightSeen => ({
  way: null,
  white: false,
  levels: [],
  text: '',
  ...over,
});

export const VOICE: SpeechText = { words: 'voice', speaker: 'Nao', text: 'Wait for me!' };
