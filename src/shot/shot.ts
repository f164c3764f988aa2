/**
 * One cut with its names bound and its units resolved: frames (counted from 1), millimetres, degrees.
 * Nothing is computed yet: groups still stand as groups, keys have no numbers.
 */

import type { Span } from '../language/diagnostic.js';
import type { Camera } from './camera/camera-model.js';
import type { Settings } from './settings.js';

/** Frames from..to, both included, 1-based. */
export interface Frames {
  readonly from: number;
  readonly to: number;
}

// ---- timelines

export type ShotChart =
  | { readonly form: 'even' | 'early' | 'late' | 'both' }
  | { readonly form: 'fractions'; readonly fractions: readonly number[] };

export type ShotRepeat =
  | { readonly form: 'times'; readonly times: number }
  | { readonly form: 'frames'; readonly frames: number }
  | { readonly form: 'open' };

interface Shown {
  readonly span: Span;
  /** Frames that the item is exposed for: its own `:N` or what `on` says. */
  readonly frames: number;
  /** Whether `:N` was typed. */
  readonly own: boolean;
  /** The place of the length behind the `:`, or null. */
  readonly lengthSpan: Span | null;
  /** `..`: goes on until the next `@` or the end. */
  readonly open: boolean;
}

export type ShotItem =
  | (Shown & {
      readonly kind: 'key';
      readonly name: string;
      readonly chart: (ShotChart & { readonly span: Span }) | null;
    })
  | (Shown & { readonly kind: 'between'; readonly breakdown: boolean })
  | (Shown & { readonly kind: 'reference'; readonly name: BetweenName })
  | (Shown & { readonly kind: 'empty' })
  | { readonly kind: 'at'; readonly span: Span; readonly frame: number }
  | {
      readonly kind: 'group';
      readonly span: Span;
      readonly items: readonly ShotItem[];
      /** There and back. */
      readonly bounce: boolean;
      readonly repeat: ShotRepeat;
      /** The place of `*3`, `:2+0` or `..`, or null: played once. */
      readonly repeatSpan: Span | null;
      /** The phrase that it came from, or null. */
      readonly phrase: string | null;
    };

/** An in-between's name: the `index`-th of the passage from `key` (to `to` where it is said); letter '' or a-z. */
export interface BetweenName {
  readonly key: string;
  readonly to: string | null;
  readonly index: number;
  readonly letter: string;
}

/** An entry of a `cels` line: number = place in the line, from 1. */
export type Pinned = { readonly span: Span } & (
  | { readonly form: 'key'; readonly name: string }
  | { readonly form: 'between'; readonly name: BetweenName }
  | { readonly form: 'unused' }
);

export type Group = Extract<ShotItem, { kind: 'group' }>;
export type AtItem = Extract<ShotItem, { kind: 'at' }>;
/** An item that shows one thing. */
export type Leaf = Exclude<ShotItem, Group | AtItem>;

/**
 * A phrase is bound once for each exposure that it is played on, and its items are shared by all groups that play it: the
 * items are a graph without circles, small however often phrases play phrases.
 */
export interface Timeline {
  readonly span: Span;
  readonly items: readonly ShotItem[];
  /** False: some items could not be bound (an error says which), so that its length is not known. */
  readonly whole: boolean;
  /** Keys that follow each other with no in-betweens, where the text says that this is meant. */
  readonly direct: readonly DirectKeys[];
}

/** Names of two keys. */
export interface DirectKeys {
  readonly from: string;
  readonly to: string;
}

/** What a mouth looks like: closed, half, open; where each vowel has its drawing, closed and the vowels. */
export type MouthShape = 'closed' | 'half' | 'open' | Vowel;
export type Vowel = 'a' | 'i' | 'u' | 'e' | 'o';

export interface Mouth {
  readonly speaker: string;
  /** The key that draws each shape: three of them, or closed and five vowels. One key may draw several. */
  readonly drawings: ReadonlyMap<MouthShape, string>;
  /** Frames that a drawing is exposed for. */
  readonly on: number;
  /** Frames by which it leads the sound. */
  readonly lead: number;
  /** How its lines were made, by the place of each `voice` statement; those that it does not speak in the picture are not among them. */
  readonly lines: readonly { readonly span: Span; readonly read: boolean }[];
  readonly span: Span;
}

export interface Level {
  readonly name: string;
  /** What it shows, as the timeline's title says, or ''. */
  readonly title: string;
  /** Where it was first named, for messages. */
  readonly span: Span;
  /** Null: a background or overlay that is simply there. */
  readonly timeline: Timeline | null;
  /** Whose mouth it is, where its timeline was made from what is spoken; null: the timeline was typed, or there is none. */
  readonly mouth: Mouth | null;
  readonly pinned: { readonly span: Span; readonly names: readonly Pinned[] } | null;
  readonly reuse: { readonly span: Span; readonly cut: string; readonly level: string } | null;
  /** The artwork's size and where it is written, or null: the episode's artwork paper. */
  readonly sizeMm: { readonly widthMm: number; readonly heightMm: number; readonly span?: Span } | null;
  /** Where the artwork's centre lies, from the centre of the standard field. */
  readonly homeMm: { readonly xMm: number; readonly yMm: number };
  /** Its edges may show. */
  readonly free: boolean;
  /** Fixed to the camera throughout. */
  readonly carry: boolean;
  /** The file or files of its drawings, as they are written, or null: as the episode says. */
  readonly picture: { readonly text: string; readonly span: Span } | null;
  /** Levels that it is drawn to, in register; each pair stands at both of its levels. */
  readonly drawnWith: readonly string[];
  /** Levels that it hides where it is painted; it is not seen itself. */
  readonly masks: readonly string[];
}

// ---- words on the sheet

export interface SpokenPart {
  /** As it is printed. */
  readonly text: string;
  /** As it is written, readings and all: `行《い》く`. */
  readonly reading: string;
  /** The row that it is tied to, or null: spread between its neighbours. */
  readonly frame: number | null;
  readonly span: Span;
}

export interface Spoken {
  readonly kind: 'voice' | 'sound' | 'music';
  /** '' for sound and music. */
  readonly speaker: string;
  readonly manner: 'on' | 'off' | 'mono';
  readonly frames: Frames;
  /** Its range names no end: it goes on over the end of the cut. */
  readonly open: boolean;
  readonly parts: readonly SpokenPart[];
  readonly span: Span;
}

/** The cut's recording, as its text says it. */
export interface Track {
  /** The file as it is written, from the cut's folder. */
  readonly file: string;
  /** The row on whose beginning it is first heard, from 1; not past the end of the sheet. */
  readonly frame: number;
  /** Seconds of the recording that lie before what is first heard. */
  readonly startSeconds: number;
  readonly span: Span;
  readonly fileSpan: Span;
  /** The place of what stands behind `from`, or null: the recording is that of the cut, and no longer reel. */
  readonly startSpan: Span | null;
}

/** The picture stands as it does in another cut of the episode. */
export interface LineUp {
  /** The other cut's number as it is written. */
  readonly cut: string;
  /** What lines up; '' where nothing is said. */
  readonly text: string;
  readonly span: Span;
}

export interface RowNote {
  readonly frame: number;
  readonly text: string;
  readonly span: Span;
}

export interface Shot {
  /** The cut's number as written: `12`, `12A`. */
  readonly cut: string;
  readonly title: string;
  readonly settings: Settings;
  readonly fps: number;
  /** Frames that an item with no length of its own is exposed for, where nothing else is said. */
  readonly on: number;
  readonly numbering: 'sequence' | 'frame';
  /** The cut's time without handles, frames. */
  readonly time: number;
  /** Rows of the sheet: time and handles. */
  readonly length: number;
  readonly handles: { readonly head: number; readonly tail: number };
  readonly scene: string;
  readonly take: string;
  readonly artists: readonly string[];
  /** In the order of writing. */
  readonly memos: readonly { readonly text: string; readonly span: Span }[];
  /** Cuts that this one lines up with, in the order of writing. */
  readonly lineUps: readonly LineUp[];
  /** In the order of their rows. */
  readonly notes: readonly RowNote[];
  /** In the order of their first rows. */
  readonly spoken: readonly Spoken[];
  readonly track: Track | null;
  /** The stack, bottom to top; every level of the cut is in it. */
  readonly levels: readonly Level[];
  readonly camera: Camera;
  /** Where the `cut` and `time` statements stand, for messages about the whole. */
  readonly spans: { readonly cut: Span; readonly time: Span };
}
