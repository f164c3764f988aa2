/**
 * Random cuts as text, for properties and for reading printed sheets back. Every text is without errors: each timeline fills
 * the sheet, each in-between has its keys. Warnings and hints may be there.
 *
 * A cut is built from plain numbers ("dice"), so that a failing one shrinks well: fewer levels, fewer pieces, smaller numbers.
 */

import fc from 'fast-check';

export interface CutOptions {
  readonly levels?: { readonly min?: number; readonly max?: number };
  /** Most pieces (runs, cycles, holds …) of a timeline; a piece has up to some thirty frames. */
  readonly pieces?: number;
  /** Give a `stack` with all levels and an overlay, so that the order of the statements does not matter. */
  readonly stack?: boolean;
  readonly phrases?: boolean;
  /** Dialogue, sound, notes, memos. */
  readonly words?: boolean;
}

export interface GeneratedCut {
  /** In a natural order: head, stack, phrases, timelines, words. None contains a line break. */
  readonly statements: readonly string[];
  readonly text: string;
  /** Rows of the sheet. */
  readonly length: number;
  readonly levels: readonly string[];
  /** Items of each phrase, by name. */
  readonly phrases: ReadonlyMap<string, string>;
}

const LEVELS = ['A', 'B', 'C', 'D', 'E', 'F', 'ア', '空', 'H', 'I', 'J', 'K', 'L', 'M', 'N', 'O'];
const TITLES = ['', '', 'Pim', 'lantern, near', 'ピム', 'smoke'];
const CHARTS = ['', '', '', '{late}', '{early}', '{both}', '{even}'];
const PHRASES = new Map([
  ['walk', '1--2--'],
  ['blink', '1-2:3 1>2.1'],
  ['sway', 'on 3 1=2:4-'],
  ['beat', '(1-2)<> 3:2'],
]);
/** Frames of each phrase once through, by the exposure that it is played on. */
const PHRASE_FRAMES = new Map<string, (on: number) => number>([
  ['walk', (on) => 6 * on],
  ['blink', (on) => 3 * on + 3],
  ['sway', () => 3 + 3 + 4 + 3],
  ['beat', (on) => 4 * on + 2],
]);
const LINES = [
  ['Wait for me!'],
  ['The tide', 'waits', 'for no lantern.'],
  ['Somebody rings, girl.', 'Somebody always rings.'],
  ['いま行く！'],
  ['潮が', '満ちるよ、ピム。'],
  ['コンピューターがきっと。'],
  ['ん？'],
  ['What is that, over there, beyond the second row of posts, where the road used to be?'],
];
const SPEAKERS = ['Pim', 'Oda', 'ピム', 'オダ'];
const SOUNDS = ['plop', 'footsteps, wet sand', 'カーン', 'door slams'];
const REMARKS = ['looks up', 'turns', '振り向く', 'no move of the head', 'bell, far off'];

/** Some numbers; a piece of a cut reads as many as it needs. */
const dice = fc.array(fc.nat({ max: 9999 }), { minLength: 8, maxLength: 8 });

class Dice {
  #at = 0;
  constructor(private readonly numbers: readonly number[]) {}

  /** min … max, both included. */
  from(min: number, max: number): number {
    const number =
      this.numbers[this.#at++ % this.numbers.length]! + (this.#at > this.numbers.length ? this.#at : 0);
    return min + (number % (max - min + 1));
  }

  one<T>(of: readonly T[]): T {
    return of[this.from(0, of.length - 1)]!;
  }
}

/** Builds the items of one timeline, and keeps count of its frames. */
class TimelineBuilder {
  readonly items: string[] = [];
  /** Frames so far. */
  frames = 0;
  /** The highest key so far. */
  #keys = 0;
  #on = 2;
  /** Whether the item before can be held by an `@`. */
  #held = false;
  readonly #passages: { from: number; to: number; count: number }[] = [];

  constructor(private readonly phrases: boolean) {}

  #fresh(): number {
    return ++this.#keys;
  }

  #key(roll: Dice): number {
    return this.#keys > 1 && roll.from(0, 3) === 0 ? roll.from(1, this.#keys) : this.#fresh();
  }

  #lasts(roll: Dice): [text: string, frames: number] {
    const own = roll.from(0, 2) === 0;
    const frames = own ? roll.from(1, 14) : this.#on;
    this.#held = !own;
    return [own ? `:${frames}` : '', frames];
  }

  #dashes(count: number, breakdown: number): string {
    return Array.from({ length: count }, (_, i) => (i === breakdown ? '=' : '-')).join('');
  }

  /** `4:6{late}--5-6:3`, from fresh keys or old ones. */
  #run(roll: Dice): void {
    let text = '';
    let from: number | null = null;
    for (let i = roll.from(1, 3); i > 0; i--) {
      const before = this.#keys;
      const key = this.#key(roll);
      if (from !== null) {
        const count = roll.from(0, 4);
        // A chart is given where the passage cannot have been there before.
        const fresh = key > before && from === before;
        if (count > 0 && fresh) text += roll.one(CHARTS);
        text += count > 0 ? this.#dashes(count, roll.from(0, 9)) : ' ';
        this.frames += count * this.#on;
        if (count > 0) this.#passages.push({ from, to: key, count });
      }
      const [length, frames] = this.#lasts(roll);
      text += `${key}${length}`;
      this.frames += frames;
      from = key;
    }
    this.items.push(text);
  }

  /** What a cycle (or, closed, a way there and back) repeats, and its frames. */
  #loop(roll: Dice, closed: boolean): [text: string, frames: number] {
    const first = this.#key(roll);
    const counts = [roll.from(0, 3), roll.from(0, 2)];
    const keys = [first, this.#fresh()];
    let text = String(first);
    let frames = this.#on;
    for (const [i, count] of (closed ? counts.slice(0, 1) : counts).entries()) {
      text += count > 0 ? this.#dashes(count, i === 0 ? 0 : -1) : ' ';
      frames += count * this.#on;
      if (i === 0) {
        text += String(keys[1]);
        frames += this.#on;
      }
      if (count > 0) this.#passages.push({ from: keys[i]!, to: keys[1 - i]!, count });
    }
    const pass = closed ? 2 * frames - 2 * this.#on : frames;
    return [`(${text})${closed ? '<>' : ''}`, pass];
  }

  #cycle(roll: Dice, closed: boolean): void {
    const [group, pass] = this.#loop(roll, closed);
    const form = roll.from(0, 2);
    if (form === 0) {
      const frames = roll.from(1, 40);
      this.items.push(`${group}:${frames}`);
      this.frames += frames;
      this.#held = false;
    } else {
      const times = roll.from(1, 3);
      this.items.push(`${group}*${times}`);
      this.frames += times * pass;
      this.#held = true;
    }
  }

  #phrase(roll: Dice): void {
    const name = roll.one([...PHRASES.keys()]);
    const times = roll.from(1, 3);
    this.items.push(times === 1 ? name : `${name}*${times}`);
    this.frames += times * PHRASE_FRAMES.get(name)!(this.#on);
    // Its keys are those of the phrase, so that fresh ones lie above them.
    this.#keys = Math.max(this.#keys, 3);
    this.#held = false;
  }

  #again(roll: Dice): void {
    const passage = this.#passages.length > 0 ? roll.one(this.#passages) : null;
    if (!passage) {
      this.#run(roll);
      return;
    }
    const [length, frames] = this.#lasts(roll);
    // Of two counts the first written is meant, and it may have fewer.
    const count = this.#passages.find((each) => each.from === passage.from && each.to === passage.to)!.count;
    this.items.push(`${passage.from}>${passage.to}.${roll.from(1, count)}${length}`);
    this.frames += frames;
  }

  piece(roll: Dice): void {
    const kind = roll.from(0, 9);
    if (kind <= 2) this.#run(roll);
    else if (kind <= 4) this.#cycle(roll, kind === 4);
    else if (kind === 5) this.#empty(roll);
    else if (kind === 6 && this.phrases) this.#phrase(roll);
    else if (kind === 7) this.#again(roll);
    else if (kind === 9) this.#later(roll);
    else {
      this.#on = roll.from(1, 4);
      this.items.push(`on ${this.#on}`);
      this.#run(roll);
    }
  }

  #empty(roll: Dice): void {
    const frames = roll.from(1, 20);
    this.items.push(`x:${frames}`);
    this.frames += frames;
    this.#held = false;
  }

  /** An `@` after what may be held, or at the beginning. */
  #later(roll: Dice): void {
    if (this.frames === 0 || this.#held) {
      this.frames += roll.from(0, 12);
      this.items.push(`@${this.frames + 1}`);
    }
    this.#run(roll);
  }

  /** Frames that must be left for the end. */
  static readonly END = 1;

  end(roll: Dice, length: number): void {
    const rest = length - this.frames;
    switch (roll.from(0, 6)) {
      case 0:
        this.items.push(`x:${rest}`);
        return;
      case 1:
        this.items.push('x..');
        return;
      case 2:
        this.items.push(`${this.#loop(roll, false)[0]}..`);
        return;
      case 3:
        this.items.push(`${this.#loop(roll, true)[0]}..`);
        return;
      case 4:
        this.items.push(`${this.#loop(roll, false)[0]}:${rest}`);
        return;
      case 5:
        this.items.push(`${this.#key(roll)}:${rest}`);
        return;
      default:
        this.items.push(`${this.#key(roll)}..`);
    }
  }
}

function quoted(text: string, japanese: boolean): string {
  return japanese ? `「${text}」` : `"${text}"`;
}

function isJapanese(text: string): boolean {
  return /[\u3040-\u9fff]/.test(text);
}

/** Dialogue one after the other, never at the same time: two speakers at once need two columns, which is a case for itself. */
function spoken(rolls: readonly Dice[], length: number): string[] {
  const statements: string[] = [];
  let cursor = 1;
  for (const roll of rolls) {
    const from = cursor + roll.from(0, 20);
    const to = from + roll.from(8, 40);
    if (to > length) break;
    const parts = roll.one(LINES);
    const manner = roll.one(['', '', ' off', ' mono']);
    const speaker = roll.one(SPEAKERS);
    let row = from;
    const words = parts.map((part, i) => {
      if (i > 0) row += roll.from(1, 5);
      const tie = i > 0 && row <= to && roll.from(0, 1) === 1 ? `@${row} ` : '';
      return `${tie}${quoted(part, isJapanese(part))}`;
    });
    statements.push(
      `voice ${quoted(speaker, isJapanese(speaker))}${manner} ${from}..${to} ${words.join(' ')}`,
    );
    cursor = to + 1;
  }
  return statements;
}

interface Recipe {
  readonly levels: readonly { readonly head: number[]; readonly pieces: number[][] }[];
  readonly cut: number[];
  readonly voices: number[][];
  readonly notes: number[][];
}

function build(recipe: Recipe, options: CutOptions): GeneratedCut {
  const head = new Dice(recipe.cut);
  const builders = recipe.levels.map(({ pieces }) => {
    const builder = new TimelineBuilder(options.phrases ?? true);
    for (const numbers of pieces) builder.piece(new Dice(numbers));
    return builder;
  });
  const needed = Math.max(...builders.map((builder) => builder.frames)) + TimelineBuilder.END;
  const length = needed + head.from(0, 60);
  const names = LEVELS.slice(0, builders.length);
  const timelines = builders.map((builder, i) => {
    const roll = new Dice(recipe.levels[i]!.head);
    const title = roll.one(TITLES);
    builder.end(roll, length);
    return `${names[i]}${title ? ` ${quoted(title, isJapanese(title))}` : ''}: ${builder.items.join(' ')}`;
  });
  const phrases = new Map(
    [...PHRASES].filter(([name]) => timelines.some((timeline) => new RegExp(`\\b${name}\\b`).test(timeline))),
  );
  const statements = [
    `cut ${head.from(1, 400)}${head.one(['', '', 'A'])} "Rooftop, dusk"`,
    `time ${head.one([String(length), `${Math.floor(length / 24)}+${length % 24}`])}`,
    `numbering ${head.one(['sequence', 'frame'])}`,
    `artist "M. Arai"`,
    ...(options.stack
      ? [`stack BG ${names.slice(0, 1).join(' ')} BOOK1 ${names.slice(1).join(' ')}`.trim()]
      : []),
    ...[...phrases].map(([name, items]) => `phrase ${name} = ${items}`),
    ...timelines,
  ];
  if (options.words ?? true) {
    statements.push(
      ...spoken(
        recipe.voices.map((numbers) => new Dice(numbers)),
        length,
      ),
    );
    for (const numbers of recipe.notes) {
      const roll = new Dice(numbers);
      const remark = roll.one(REMARKS);
      const from = roll.from(1, length);
      if (roll.from(0, 2) === 0) statements.push(`memo ${quoted(remark, isJapanese(remark))}`);
      else if (roll.from(0, 1) === 0) statements.push(`note ${from} ${quoted(remark, isJapanese(remark))}`);
      else statements.push(`sound ${from}..${roll.from(from, length)} "${roll.one(SOUNDS)}"`);
    }
  }
  return { statements, text: `${statements.join('\n')}\n`, length, levels: names, phrases };
}

/** Random cuts with all their parts. */
export function generatedCuts(options: CutOptions = {}): fc.Arbitrary<GeneratedCut> {
  const { min = 1, max = 8 } = options.levels ?? {};
  return fc
    .record({
      levels: fc.array(
        fc.record({ head: dice, pieces: fc.array(dice, { maxLength: options.pieces ?? 6 }) }),
        { minLength: min, maxLength: Math.min(max, LEVELS.length) },
      ),
      cut: dice,
      voices: fc.array(dice, { maxLength: 4 }),
      notes: fc.array(dice, { maxLength: 5 }),
    })
    .map((recipe) => build(recipe, options));
}

/** Random cuts as text. */
export function cutTexts(options: CutOptions = {}): fc.Arbitrary<string> {
  return generatedCuts(options).map((cut) => cut.text);
}
