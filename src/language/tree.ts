/**
 * The tree of one text: what was typed, every part with its place, nothing looked up or computed.
 * A statement that could not be read is not in the tree; its problem is in the parse's diagnostics.
 */

import type { Span } from './diagnostic.js';
import type { CameraStatement } from './tree-camera.js';

export interface Node {
  readonly span: Span;
}

/** A name, in NFC. */
export interface Word extends Node {
  readonly text: string;
}

/** Quoted text, escapes resolved. */
export interface Quote extends Node {
  readonly text: string;
}

export interface Numeral extends Node {
  readonly value: number;
}

/** A time as typed, before it is known for what. `mark` is a named place with an offset in frames. */
export type TypedTime = Node &
  (
    | { readonly form: 'frames'; readonly frames: number }
    | { readonly form: 'seconds'; readonly seconds: number; readonly frames: number }
    | { readonly form: 'feet'; readonly feet: number; readonly frames: number }
    | { readonly form: 'mark'; readonly name: string; readonly offset: number }
  );

/** How long something lasts. A mark is none; it is kept to be told of. */
export type Length = TypedTime & { readonly kind: 'length' };

/** The place of a frame, counted from the beginning of the sheet. */
export type Position = TypedTime & { readonly kind: 'position' };

export type Time = Length | Position;

/** `a..b`; `to` null: to the end of the sheet. */
export interface Range extends Node {
  readonly from: Position;
  readonly to: Position | null;
}

// ---- timelines

export type Chart = Node &
  (
    | { readonly form: 'named'; readonly name: string }
    | { readonly form: 'fractions'; readonly fractions: readonly Numeral[] }
  );

/** How a group or phrase is repeated. `once` where nothing is said. */
export type Repeat =
  | { readonly form: 'once' }
  | { readonly form: 'times'; readonly times: number; readonly span: Span }
  | { readonly form: 'length'; readonly length: Length; readonly span: Span }
  | { readonly form: 'open'; readonly span: Span };

interface Shown extends Node {
  /** `:N`, or null. */
  readonly length: Length | null;
  /** The place of a `..` behind the item, or null. */
  readonly open: Span | null;
}

export type Item =
  | (Shown & { readonly kind: 'key'; readonly name: string; readonly chart: Chart | null })
  | (Shown & { readonly kind: 'between'; readonly breakdown: boolean })
  /** `1.2`, `1>3.2`, `1.2a`; `index` is 1-based (0 only in `1.0a`), `letter` as typed or ''. */
  | (Shown & {
      readonly kind: 'reference';
      readonly key: string;
      readonly to: string | null;
      readonly index: number;
      readonly letter: string;
    })
  | (Shown & { readonly kind: 'empty' })
  | (Node & { readonly kind: 'on'; readonly frames: number })
  /** From the key before it to the key behind it there are no in-betweens, and that is meant. */
  | (Node & { readonly kind: 'direct' })
  | (Node & { readonly kind: 'at'; readonly position: Position })
  | (Node & {
      readonly kind: 'group';
      readonly items: readonly Item[];
      readonly bounce: boolean;
      readonly repeat: Repeat;
    })
  | (Node & {
      readonly kind: 'phrase';
      readonly name: string;
      readonly bounce: boolean;
      readonly repeat: Repeat;
      /** The blanks before `B: 1` at the beginning of an indented line, else null: it reads like a timeline, were it not for them. */
      readonly margin: Span | null;
    });

/** A drawing's name in a `cels` line. `unused` is `_`. */
export type CelName = Node &
  (
    | { readonly form: 'key'; readonly name: string }
    | {
        readonly form: 'between';
        readonly key: string;
        readonly to: string | null;
        readonly index: number;
        readonly letter: string;
      }
    | { readonly form: 'unused' }
  );

// ---- words on the sheet

/** A piece of dialogue; `at` ties it to a row. */
export interface Said extends Quote {
  readonly at: Position | null;
}

/** A time in a recording, counted from its beginning. */
export type RecordingTime = Node &
  (
    | { readonly form: 'seconds'; readonly seconds: number }
    | {
        readonly form: 'timecode';
        readonly hours: number;
        readonly minutes: number;
        readonly seconds: number;
        readonly frames: number;
      }
  );

/** A drawing of a mouth: a key's name, and the vowel before it or null. */
export interface MouthDrawing extends Node {
  readonly key: Word;
  readonly vowel: Word | null;
}

// ---- statements

export interface Size extends Node {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** mm from the centre of the standard field, x right, y up. */
export interface Point extends Node {
  readonly xMm: number;
  readonly yMm: number;
}

/** `8/C`: level C of cut 8. */
export interface CutLevel extends Node {
  readonly cut: string;
  readonly level: string;
}

interface Stated extends Node {
  /** The place of the statement's first word. */
  readonly word: Span;
}

export type Statement =
  | CameraStatement
  | (Stated &
      (
        | {
            readonly kind: 'timeline';
            readonly level: Word;
            readonly title: Quote | null;
            readonly items: readonly Item[];
          }
        | { readonly kind: 'phrase'; readonly name: Word; readonly items: readonly Item[] }
        | { readonly kind: 'cels'; readonly level: Word; readonly names: readonly CelName[] }
        | { readonly kind: 'cut'; readonly number: Word; readonly title: Quote | null }
        | { readonly kind: 'time'; readonly time: Length }
        | { readonly kind: 'fps'; readonly value: Numeral }
        | { readonly kind: 'on'; readonly value: Numeral }
        | { readonly kind: 'numbering'; readonly value: Word }
        | { readonly kind: 'mark'; readonly name: Word; readonly position: Position }
        | { readonly kind: 'stack'; readonly levels: readonly Word[] }
        | {
            readonly kind: 'level';
            readonly level: Word;
            readonly size: Size | null;
            readonly at: Point | null;
            readonly free: Span | null;
            readonly carry: Span | null;
            /** Its appearing is a flash of light. */
            readonly flash: Span | null;
            readonly reuse: CutLevel | null;
            /** The file or files of its drawings. */
            readonly picture: Quote | null;
            /** Levels that it is drawn to, in register. */
            readonly with: readonly Word[] | null;
            /** Levels that it hides where it is painted. */
            readonly masks: readonly Word[] | null;
          }
        | {
            readonly kind: 'voice';
            readonly speaker: Quote;
            readonly manner: 'on' | 'off' | 'mono';
            readonly range: Range;
            readonly words: readonly Said[];
          }
        | { readonly kind: 'sound' | 'music'; readonly range: Range; readonly words: readonly Said[] }
        | {
            readonly kind: 'track';
            readonly path: Quote;
            /** The row on which it begins, or null: the first. */
            readonly at: Position | null;
            /** Where in the recording it begins, or null: at its beginning. */
            readonly from: RecordingTime | null;
          }
        | {
            readonly kind: 'mouth';
            readonly level: Word;
            readonly speaker: Quote;
            /** As written, in any number: closed, half, open; or closed, then each with its vowel. */
            readonly drawings: readonly MouthDrawing[];
            readonly on: Numeral | null;
            readonly lead: Numeral | null;
            /** The words are not read. */
            readonly flaps: Span | null;
          }
        | { readonly kind: 'note'; readonly position: Position; readonly text: Quote }
        | { readonly kind: 'memo'; readonly text: Quote }
        /** It lines up with another cut of the episode. `text`: in what, or null. */
        | { readonly kind: 'same'; readonly cut: Word; readonly text: Quote | null }
        | { readonly kind: 'scene' | 'take'; readonly value: Word | Quote }
        | { readonly kind: 'artist'; readonly name: Quote }
        | { readonly kind: 'use'; readonly path: Quote }
        /** `code`: of a message, as typed. */
        | { readonly kind: 'accept'; readonly code: Word; readonly reason: Quote }
      ));

/** The node of a kind; where one node serves several kinds it is that node. */
export type StatementOf<K extends Statement['kind']> = Serving<Statement, K>;
type Serving<S extends Statement, K> = S extends unknown ? (K & S['kind'] extends never ? never : S) : never;

export interface Tree {
  readonly file: string;
  readonly statements: readonly Statement[];
  /** What unreadable statements began to say: their first word, and the name that they would have defined, or null. */
  readonly broken: readonly { readonly word: string; readonly name: string | null; readonly span: Span }[];
}
