/**
 * What differs between two versions of a cut, in the terms of the trade. Frames count the rows of the sheet from 1, lengths are
 * frames, ways and places millimetres on the artwork, angles degrees clockwise. Plain data: it is what `--json` prints.
 */

import type { Move, Spacing } from '../shot/camera/camera-model.js';
import type { ParameterName } from '../shot/camera/move-kinds.js';
import type { Frames } from '../shot/shot.js';
import type { DrawingKind } from '../solve/solved-shot.js';

export type { Frames, Spacing };

/** The same thing before and after. */
export interface Was<T> {
  readonly old: T;
  readonly now: T;
}

/** Where on the sheet a change is seen. */
export type ChangePlace =
  | { readonly kind: 'level'; readonly level: string }
  | { readonly kind: 'speech' | 'camera' | 'notes' };

export type Change = ChangeBody & {
  /** Null: the header, or the cut as a whole. */
  readonly place: ChangePlace | null;
  /** Rows of the new sheet that it is about, null where it is about none. Which of them show something else: changed-rows.ts. */
  readonly rows: Frames | null;
};

export type ChangeOf<K extends Change['kind']> = Holding<Change, K>;
type Holding<C extends Change, K> = C extends Change ? (K extends C['kind'] ? C : never) : never;

export type ChangeBody = HeadChange | LevelChange | DrawingChange | CameraChange | WordChange;

// ---- the cut as a whole

export type HeadChange =
  | ({ readonly kind: 'cut' | 'title' | 'scene' | 'take' } & Was<string>)
  | ({ readonly kind: 'artist' } & Was<readonly string[]>)
  /** The cut's time without handles. */
  | ({ readonly kind: 'time' } & Was<number>)
  | ({ readonly kind: 'handles' } & Was<{ readonly head: number; readonly tail: number }>)
  | ({ readonly kind: 'fps' } & Was<number>)
  | ({ readonly kind: 'standard-field' } & Was<Size>)
  /** A memo; null: there was none in its place, or there is none any more. */
  | ({ readonly kind: 'memo' } & Was<string | null>)
  /** Cuts that it lines up with, each with what lines up: `4`, `4 the stairs`. */
  | ({ readonly kind: 'line-up' } & Was<readonly string[]>);

export interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

// ---- levels

export type LevelChange =
  /** Bottom to top; said only where levels that were there before stand in another order. */
  | ({ readonly kind: 'stack' } & Was<readonly string[]>)
  | ({ readonly kind: 'level-added'; readonly above: string | null } & LevelSeen)
  | ({ readonly kind: 'level-dropped' } & LevelSeen)
  | { readonly kind: 'level-renamed'; readonly level: string; readonly old: string }
  | ({ readonly kind: 'level-title'; readonly level: string } & Was<string>)
  /** Null: the size of the episode's artwork paper. */
  | ({ readonly kind: 'artwork-size'; readonly level: string } & Was<Size | null>)
  | ({ readonly kind: 'artwork-home'; readonly level: string } & Was<Point>)
  | {
      readonly kind: 'level-manner';
      readonly level: string;
      readonly manner: 'free' | 'carry' | 'flash';
      readonly now: boolean;
    }
  /** Levels that it is drawn to, or that it masks. */
  | ({ readonly kind: 'level-others'; readonly level: string; readonly part: 'with' | 'masks' } & Was<
      readonly string[]
    >)
  | ({ readonly kind: 'reuse'; readonly level: string } & Was<{
      readonly cut: string;
      readonly level: string;
    } | null>)
  /** It has a timeline now, or has none any more and is simply there. */
  | { readonly kind: 'level-timed'; readonly level: string; readonly now: boolean }
  | { readonly kind: 'level-emptied'; readonly level: string };

export interface LevelSeen {
  readonly level: string;
  readonly title: string;
  /** How many drawings it has, without reused ones. */
  readonly drawings: number;
}

// ---- what levels show

/** One thing that a level shows: a drawing, nothing, or a cycle from its first to its last drawing. */
export type SeenThing =
  | {
      readonly form: 'drawing';
      readonly drawing: string;
      readonly kind: DrawingKind;
      readonly cel: number;
      /** The keys that an in-between lies between, where a passage says so. */
      readonly way: { readonly from: string; readonly to: string } | null;
    }
  | { readonly form: 'empty' }
  | { readonly form: 'cycle'; readonly first: string; readonly last: string };

/** A thing that is shown for a while. `fresh`: a drawing that the other version does not have. */
export interface Shown {
  readonly seen: SeenThing;
  readonly from: number;
  readonly frames: number;
  readonly fresh: boolean;
}

/** What comes earlier or later because of a change: up to `last`, or to the end of the sheet where that is null. */
export interface Follow {
  readonly by: number;
  readonly last: SeenThing | null;
}

export type DrawingChange =
  /** From one key to the next there are no in-betweens, and the text says so now, or no longer. */
  | {
      readonly kind: 'direct';
      readonly level: string;
      readonly from: string;
      readonly to: string;
      readonly now: boolean;
    }
  /** Each of `first` … `last` (`count` of them, one after the other) is held for longer or shorter. */
  | {
      readonly kind: 'exposure';
      readonly level: string;
      readonly first: SeenThing;
      readonly last: SeenThing;
      readonly count: number;
      readonly frames: Was<number>;
      readonly from: Was<number>;
      readonly inCycle: boolean;
      readonly follows: Follow | null;
    }
  /** `first` … `last` come earlier (negative) or later, all by the same number of frames. */
  | {
      readonly kind: 'moved';
      readonly level: string;
      readonly first: SeenThing;
      readonly last: SeenThing;
      readonly by: number;
      readonly from: Was<number>;
      /** `last` is the last thing of the level, or of the cycle. */
      readonly toEnd: boolean;
      readonly inCycle: boolean;
    }
  /**
   * Things put in, taken out, or shown instead of others. `holder`: the neighbour that is held for so much less, or more, that
   * nothing else moves.
   */
  | {
      readonly kind: 'shown';
      readonly level: string;
      readonly old: readonly Shown[];
      readonly now: readonly Shown[];
      readonly from: Was<number>;
      readonly holder: SeenThing | null;
      readonly inCycle: boolean;
      readonly follows: Follow | null;
    }
  /** More or fewer in-betweens from one key to the next. */
  | {
      readonly kind: 'in-betweens';
      readonly level: string;
      readonly from: string;
      readonly to: string;
      readonly count: Was<number>;
      /** Those that are new, by name and number. */
      readonly added: readonly { readonly drawing: string; readonly cel: number }[];
      readonly dropped: readonly { readonly drawing: string; readonly cel: number }[];
      readonly frame: number;
      readonly holder: SeenThing | null;
      readonly follows: Follow | null;
    }
  | {
      readonly kind: 'chart';
      readonly level: string;
      readonly from: string;
      readonly to: string;
      readonly chart: Was<string>;
      readonly fractions: Was<readonly number[]>;
    }
  /** Drawings on paper, of a passage with more or fewer in-betweens, that now lie elsewhere on the way. */
  | {
      readonly kind: 'places';
      readonly level: string;
      readonly from: string;
      readonly to: string;
      readonly drawings: readonly ({ readonly drawing: string; readonly cel: number } & Was<number>)[];
    }
  | {
      readonly kind: 'breakdown';
      readonly level: string;
      readonly drawing: string;
      readonly cel: number;
      readonly now: boolean;
    }
  /** Another key in a key's place, wherever that stood. */
  | ({ readonly kind: 'key'; readonly level: string; readonly frame: number } & Was<string>)
  /** A cycle played more or fewer times, for longer or shorter, or there and back. Null times: it goes on until further notice. */
  | {
      readonly kind: 'cycle';
      readonly level: string;
      readonly cycle: Extract<SeenThing, { form: 'cycle' }>;
      readonly from: Was<number>;
      readonly times: Was<number | null>;
      readonly pass: Was<number>;
      readonly frames: Was<number>;
      readonly bounce: Was<boolean>;
      readonly what: 'times' | 'length' | 'bounce';
      readonly follows: Follow | null;
    }
  /** Drawings that are still there under another finished number. */
  | {
      readonly kind: 'renumbered';
      readonly level: string;
      readonly numbers: readonly { readonly drawing: string; readonly old: number; readonly now: number }[];
    }
  /** Rows that show something else, where nothing more exact can be said. */
  | { readonly kind: 'rows'; readonly level: string };

// ---- camera and light

/** A move as it is called: its kind, its levels, the names of the places on its way. */
export interface MoveSeen {
  readonly move: Move['kind'];
  readonly levels: readonly string[];
  readonly places: readonly string[];
  /** Truck in or out; null where nothing grows or shrinks, or both. */
  readonly sense: 'in' | 'out' | null;
  readonly quick: boolean;
}

/** What a change does to a move's speed: whole way and largest step of a frame. */
export interface MoveSpeed {
  readonly wayMm: Was<number>;
  readonly largestStepMm: Was<number>;
}

export type CameraChange =
  | ({
      readonly kind: 'field-added' | 'field-dropped';
      readonly field: string;
      readonly widthMm: number;
    } & Point)
  | { readonly kind: 'field-renamed'; readonly field: string; readonly old: string }
  | ({ readonly kind: 'field-moved'; readonly field: string; readonly by: Point } & Was<Point>)
  /** `percent`: of the standard field. */
  | ({ readonly kind: 'field-resized'; readonly field: string; readonly percent: Was<number> } & Was<number>)
  | ({ readonly kind: 'field-turned'; readonly field: string } & Was<number>)
  /** The field on which the camera rests where no move of it is there. */
  | ({ readonly kind: 'fix' } & Was<string>)
  | ({ readonly kind: 'move-added' | 'move-dropped'; readonly frames: Frames } & MoveSeen)
  /** Earlier, later, longer, shorter. `stops`: frames of each place on the way, where those in the middle changed. */
  | ({
      readonly kind: 'move-time';
      readonly frames: Was<Frames>;
      readonly stops: Was<readonly number[]> | null;
    } & MoveSpeed &
      MoveSeen)
  /** The way of a pull or follow; `rateMm` where it is said as a speed. */
  | ({
      readonly kind: 'move-way';
      readonly distanceMm: Was<number>;
      readonly rateMm: Was<number | null>;
    } & MoveSpeed &
      MoveSeen)
  /** Other places on its way: names of fields or marks, scales in percent, degrees. Where there are more or fewer of them, its time is said here. */
  | ({ readonly kind: 'move-route'; readonly frames: Was<Frames> } & Was<readonly string[]> &
      MoveSpeed &
      MoveSeen)
  /** A mark of a slide lies somewhere else. */
  | ({ readonly kind: 'mark-moved'; readonly mark: string; readonly by: Point } & Was<Point> & MoveSeen)
  | ({ readonly kind: 'move-spacing'; readonly leg: number } & Was<Spacing> & MoveSpeed & MoveSeen)
  | ({ readonly kind: 'move-manner'; readonly manner: Manner } & Was<MannerValue> & MoveSeen)
  | ({ readonly kind: 'light-added' | 'light-dropped'; readonly frames: Frames } & LightSeen)
  | ({ readonly kind: 'light-time'; readonly frames: Was<Frames> } & LightSeen)
  | ({ readonly kind: 'light-manner'; readonly manner: LightManner } & Was<MannerValue> & LightSeen);

export type Manner = 'kind' | 'gives' | 'levels' | 'graduated' | 'on' | Exclude<ParameterName, 'way'>;
export type LightManner = 'white' | 'towards' | 'centre' | 'levels' | 'shares' | 'text' | 'length';
export type MannerValue = string | number | boolean | null;

export interface LightSeen {
  readonly light: 'fade' | 'wipe' | 'iris' | 'expose' | 'glow' | 'effect' | 'overlap';
  readonly way: 'in' | 'out' | null;
  readonly white: boolean;
  readonly levels: readonly string[];
  readonly text: string;
}

// ---- words

export interface SpeechText {
  readonly words: 'voice' | 'sound' | 'music';
  readonly speaker: string;
  readonly text: string;
}

export type WordChange =
  | ({ readonly kind: 'speech-added' | 'speech-dropped'; readonly frames: Frames } & SpeechText)
  | ({ readonly kind: 'speech-time'; readonly frames: Was<Frames> } & SpeechText)
  | ({ readonly kind: 'speech-text' } & Was<string> & SpeechText)
  | ({ readonly kind: 'speech-speaker' } & Was<string> & SpeechText)
  | ({ readonly kind: 'speech-manner' } & Was<'on' | 'off' | 'mono'> & SpeechText)
  /** Words tied to other rows; `row` is null where the words are not tied to one. */
  | ({ readonly kind: 'speech-rows'; readonly word: string; readonly row: Was<number | null> } & SpeechText)
  | { readonly kind: 'note-added' | 'note-dropped'; readonly frame: number; readonly text: string }
  | { readonly kind: 'note-moved'; readonly frame: Was<number>; readonly text: string }
  | ({ readonly kind: 'note-text'; readonly frame: number } & Was<string>);
