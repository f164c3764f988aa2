/** On which frame the items of a timeline start, as far as one text tells. For the places where lines are broken, and nothing else. */

import type { Item, Statement, Time } from '../tree.js';

export interface FrameRate {
  readonly fps: number;
  /** Frames of an item that says nothing. */
  readonly on: number;
}

const FEET = 16;
/** Marks that hang on marks, phrases that play phrases. */
const DEEPEST = 20;

/** What a text says of its own times. */
export class ItemTiming {
  readonly #marks = new Map<string, Time>();
  readonly #phrases = new Map<string, readonly Item[]>();
  readonly fps: number;
  readonly #on: number;

  constructor(statements: readonly Statement[], { fps, on }: FrameRate) {
    let speed = { fps, on };
    for (const statement of statements) {
      if (statement.kind === 'mark') this.#marks.set(statement.name.text, statement.position);
      else if (statement.kind === 'phrase') this.#phrases.set(statement.name.text, statement.items);
      else if (statement.kind === 'fps') speed = { ...speed, fps: statement.value.value };
      else if (statement.kind === 'on') speed = { ...speed, on: statement.value.value };
    }
    this.fps = speed.fps;
    this.#on = speed.on;
  }

  /** Frames before each item, by where the item is written; those that cannot be known are left out. */
  before(items: readonly Item[]): Map<number, number> {
    const found = new Map<number, number>();
    let at: number | null = 0;
    let on = this.#on;
    for (const item of items) {
      if (item.kind === 'at') {
        const frame = this.#frames(item.position);
        at = frame === null ? null : frame - 1;
      }
      if (at !== null) found.set(item.span.start, at);
      if (item.kind === 'on') on = item.frames;
      const lasts = this.#lasts(item, on, 0);
      at = at === null || lasts === null ? null : at + lasts;
    }
    return found;
  }

  #frames(time: Time, depth = 0): number | null {
    switch (time.form) {
      case 'frames':
        return time.frames;
      case 'seconds':
        return time.seconds * this.fps + time.frames;
      case 'feet':
        return time.feet * FEET + time.frames;
      case 'mark': {
        const position = depth < DEEPEST ? this.#marks.get(time.name) : undefined;
        const frame = position && this.#frames(position, depth + 1);
        return frame == null ? null : frame + time.offset;
      }
    }
  }

  #lasts(item: Item, on: number, depth: number): number | null {
    switch (item.kind) {
      case 'on':
      case 'direct':
      case 'at':
        return 0;
      case 'group':
        return this.#repeated(item.items, item, on, depth);
      case 'phrase': {
        const items = this.#phrases.get(item.name);
        if (!items && item.repeat.form !== 'length') return null;
        return this.#repeated(items ?? [], item, on, depth);
      }
      default:
        if (item.open) return null;
        return item.length ? this.#frames(item.length) : on;
    }
  }

  #repeated(
    items: readonly Item[],
    { repeat, bounce }: Extract<Item, { kind: 'group' }> | Extract<Item, { kind: 'phrase' }>,
    on: number,
    depth: number,
  ): number | null {
    if (repeat.form === 'length') return this.#frames(repeat.length);
    if (repeat.form === 'open' || depth >= DEEPEST) return null;
    const lasts: number[] = [];
    let exposure = on;
    for (const item of items) {
      if (item.kind === 'on') exposure = item.frames;
      const one = this.#lasts(item, exposure, depth + 1);
      if (one === null) return null;
      if (one > 0) lasts.push(one);
    }
    const once = lasts.reduce((sum, one) => sum + one, 0);
    const pass = bounce ? 2 * once - (lasts[0] ?? 0) - (lasts.at(-1) ?? 0) : once;
    return repeat.form === 'times' ? pass * repeat.times : pass;
  }
}
