/** Single edits of random cuts: each changes one thing of the text, and says what a comparison must call it. */

import type { GeneratedCut } from '../generate.js';

export interface Seed {
  /** What the edit is called. */
  readonly name: string;
  /**
   * Edited statements, or null where the cut has no place for the edit. `pick` chooses among the places: any whole number.
   * `level` is the one that must be named, where there is one.
   */
  readonly edit: (
    cut: GeneratedCut,
    pick: number,
  ) => { readonly text: string; readonly level: string } | null;
  /** Kinds of change that may come of it, all of the level: the first exactly once, the others for numbers that move along. */
  readonly kinds: readonly (readonly string[])[];
}

/** A timeline's parts, by its statement. */
const TIMELINE = /^(\S+)( ["「][^"」]*["」])?: /;

/** What a phrase plays is not seen in the timeline. */
const PHRASE = /\b(walk|blink|sway|beat)\b/;

function levelOf(statement: string): string | null {
  return TIMELINE.exec(statement)?.[1] ?? null;
}

/** One match of `pattern` in one timeline whose end is open, replaced. Groups and phrases are left alone unless `inside`. */
function inTimeline(
  pattern: RegExp,
  replace: (match: RegExpMatchArray, statement: string) => string | null,
): Seed['edit'] {
  return (cut, pick) => {
    const places = cut.statements.flatMap((statement, i) => {
      const head = TIMELINE.exec(statement);
      if (!head || !statement.endsWith('..')) return [];
      return [...statement.matchAll(pattern)]
        .filter(({ index }) => index >= head[0].length)
        .map((match) => ({ i, match, statement }));
    });
    if (places.length === 0) return null;
    const { i, match, statement } = places[pick % places.length]!;
    const text = replace(match, statement);
    if (text === null) return null;
    const edited = statement.slice(0, match.index) + text + statement.slice(match.index + match[0].length);
    return {
      text: `${cut.statements.map((one, k) => (k === i ? edited : one)).join('\n')}\n`,
      level: levelOf(statement)!,
    };
  };
}

/** Whether a place of a statement lies in parentheses. */
export function grouped(statement: string, at: number): boolean {
  const before = statement.slice(0, at);
  return before.split('(').length > before.split(')').length;
}

const outside =
  (text: (match: RegExpMatchArray) => string) =>
  (match: RegExpMatchArray, statement: string): string | null =>
    grouped(statement, match.index!) ? null : text(match);

export const SEEDS: readonly Seed[] = [
  {
    name: 'a drawing held longer',
    edit: inTimeline(
      /(?<=\b\d+:)\d+/g,
      outside(([frames]) => String(Number(frames) + 3)),
    ),
    // Before an `@` it is the same to say that what follows comes later.
    kinds: [['exposure', 'moved'], ['renumbered']],
  },
  {
    name: 'an empty stretch longer',
    edit: inTimeline(
      /(?<=\bx:)\d+/g,
      outside(([frames]) => String(Number(frames) + 5)),
    ),
    kinds: [['moved'], ['renumbered']],
  },
  {
    name: 'one in-between more',
    edit: inTimeline(/[-=]+(?=\d)/g, (match, statement) => {
      // A group for a time shorter than its pass loses what more in-betweens push out of it.
      if (PHRASE.test(statement) || /[)>]:\d/.test(statement)) return null;
      const from = /(\d+)(:\d+)?(\{\w+\})?$/.exec(statement.slice(0, match.index))?.[1];
      const to = /^\d+/.exec(statement.slice(match.index! + match[0].length))?.[0];
      const again = new RegExp(`(?<!\\d)${from}(:\\d+)?(\\{\\w+\\})?[-=]+${to}(?!\\d)`, 'g');
      const once =
        [...statement.matchAll(again)].length === 1 && !new RegExp(`${from}>${to}\\.`).test(statement);
      return once ? `${match[0]}-` : null;
    }),
    kinds: [['in-betweens'], ['renumbered']],
  },
  {
    name: 'a cycle once more',
    edit: inTimeline(
      /(?<=\)(?:<>)?\*)[23]/g,
      outside(([times]) => String(Number(times) + 1)),
    ),
    kinds: [['cycle'], ['renumbered']],
  },
  {
    name: 'a key replaced by a new one',
    edit: inTimeline(/(?<![\d.:>*@\w/])\d+(?![\d.>+])/g, ([key], statement) => {
      const all = new RegExp(`(?<![\\d.:>*@\\w/])${key}(?![\\d])`, 'g');
      const meant = new RegExp(`(?<!\\d)${key}(?!\\d)`, 'g');
      const body = statement.replace(TIMELINE, '');
      if (PHRASE.test(body)) return null;
      return [...body.matchAll(all)].length === 1 && [...body.matchAll(meant)].length === 1 ? '99' : null;
    }),
    kinds: [['key'], ['renumbered']],
  },
  {
    name: 'a level dropped',
    edit: (cut, pick) => {
      const timelines = cut.statements.filter((one) => levelOf(one) !== null);
      if (timelines.length < 2) return null;
      const gone = timelines[pick % timelines.length]!;
      return { text: `${cut.statements.filter((one) => one !== gone).join('\n')}\n`, level: levelOf(gone)! };
    },
    kinds: [['level-dropped']],
  },
  {
    name: 'a level renamed',
    edit: (cut, pick) => {
      const level = cut.levels[pick % cut.levels.length]!;
      const text = cut.statements.map((one) => (levelOf(one) === level ? one.replace(level, 'ZZ') : one));
      return { text: `${text.join('\n')}\n`, level: 'ZZ' };
    },
    kinds: [['level-renamed']],
  },
  {
    name: 'a level titled',
    edit: (cut, pick) => {
      const i = cut.statements.findIndex((one, k) => k >= pick % cut.statements.length && TIMELINE.test(one));
      const statement = cut.statements[i];
      if (!statement?.endsWith('..')) return null;
      const title = `${TIMELINE.exec(statement)![0].slice(0, -2)} "new title": `;
      if (TIMELINE.exec(statement)![2]) return null;
      const edited = statement.replace(TIMELINE, title);
      return {
        text: `${cut.statements.map((one, k) => (k === i ? edited : one)).join('\n')}\n`,
        level: levelOf(statement)!,
      };
    },
    kinds: [['level-title']],
  },
];
