/** Things that messages speak of, by their keys; what they are called stands with the texts of each language. */

/** What a statement could have had at a place where something else stands. */
export type Expected =
  | 'level-names'
  | 'cut-number'
  | 'message-code'
  | 'time'
  | 'range'
  | 'range-dots'
  | 'millimetres'
  | 'place-comma'
  | 'quoted-words'
  | 'scene-number'
  | 'direction'
  | 'side'
  | 'way'
  | 'scale-on-frame'
  | 'field-on-frame'
  | 'marked-number'
  | 'marked-place'
  | 'marked-place-comma'
  | 'turning-levels'
  | 'sway-length'
  | 'in-or-out'
  | 'field-size'
  | 'field-place'
  | 'cut-level'
  | 'drawing-name'
  | 'drawing-names'
  | 'fraction'
  | 'chart'
  | 'chart-end'
  | 'frame-count'
  | 'repeat-count'
  | 'drawing-or-group-end'
  | 'drawing'
  | 'drawings'
  | 'phrase-equals'
  | 'short-length'
  | 'angle'
  | 'on-frame'
  | 'steps'
  | 'leg-arrow'
  | 'name'
  | 'phrase-name'
  | 'key'
  | 'between'
  | 'text'
  | 'unclosed-text'
  | 'size'
  | 'rate'
  | 'length'
  | 'degrees'
  | 'share'
  | 'chart-field'
  | 'chart-step'
  | 'chart-field-part'
  | 'chart-step-part'
  | 'seconds'
  | 'whole-seconds'
  | 'part-seconds'
  | 'timecode'
  | 'recording-time'
  | 'feet'
  | 'decimal'
  | 'between-lettered'
  | 'key-lettered'
  | 'whole'
  | 'glued'
  | 'dots'
  | 'unknown';

/** Something expected, or a sign or word of the language as it is typed, in backquotes. */
export type Wanted = Expected | `\`${string}\``;

/** Why something that belongs in a timeline does not fit where it stands. */
export type Misplaced =
  | 'length'
  | 'repeat'
  | 'bounce'
  | 'chart'
  | 'open'
  | 'arrow'
  | 'offset'
  | 'comma'
  | 'group-end'
  | 'seconds'
  | 'comma-for-blank';

/** Why no key stands before an in-between, and why none behind it. */
export type NoKeyBefore = 'start' | 'empty' | 'between' | 'cut';
export type NoKeyAfter = 'end' | 'empty' | 'group-empty' | 'group-between' | 'group-end';

/** A neighbouring cut: its number, '' where that cannot be read, and its file. */
export interface Neighbour {
  readonly cut: string;
  readonly file: string;
}

/** Why a level of another cut is not to be had. */
export type NotLent =
  /** `9/C`, `8/C`, `9/C`. */
  | { readonly why: 'circle'; readonly links: readonly string[] }
  | { readonly why: 'no-cut'; readonly cut: string }
  | { readonly why: 'too-far'; readonly most: number }
  | { readonly why: 'errors'; readonly cut: string }
  | { readonly why: 'not-lent-either'; readonly cut: string; readonly level: string }
  | { readonly why: 'no-level'; readonly cut: string; readonly level: string; readonly guess: string | null };

/** A column of `progress.csv`. */
export type ProgressColumn = 'cut' | 'stage' | 'state' | 'date' | 'person' | 'note';

/** What a key of the manifest takes; limits are both included. */
export type Takes =
  | { readonly value: 'size'; readonly least: number; readonly most: number }
  | { readonly value: 'pixels' | 'dpi' | 'running-time' | 'cuts' | 'cuts-of-artist' }
  | { readonly value: 'stages' | 'stage' | 'due' | 'day' | 'rates' }
  | { readonly value: 'rate'; readonly units: readonly string[] }
  | { readonly value: 'whole'; readonly least: number; readonly most: number }
  | { readonly value: 'rows'; readonly fault: RowsFault }
  | { readonly value: 'choice'; readonly words: readonly string[] };

/** A format of sound files. */
export type SoundFormatName =
  | 'mp3'
  | 'flac'
  | 'ogg'
  | 'aiff'
  | 'm4a'
  | 'caf'
  | 'au'
  | 'wave64'
  | 'big-endian-wave'
  | 'avi'
  | 'midi';

/** Why a recording cannot be read; `tag`: the format tag of its header. */
export type WaveTrouble =
  | {
      readonly fault:
        | 'empty'
        | 'unknown-format'
        | 'cut-off'
        | 'no-samples'
        | 'no-rate'
        | 'no-channels'
        | 'damaged';
    }
  | { readonly fault: 'other-format'; readonly format: SoundFormatName }
  | { readonly fault: 'coded'; readonly tag: number; readonly bits: number };

/** Rows of a page: whole units (feet or seconds) of so many rows, from one to `most` rows; `near` would do. */
export interface RowsFault {
  readonly unit: 'feet' | 'seconds';
  readonly rows: number;
  readonly most: number;
  readonly near: number;
  readonly paper: string;
}

/** A part of what is printed of a cut. */
export type PrintedPart = 'cover' | 'sheet' | 'charts' | 'camera' | 'table' | 'strip' | 'overlay';

/** A number that a cut says of its camera; those of fields go with the field's name. */
export type Quantity =
  | 'on'
  | 'place-x'
  | 'place-y'
  | 'point-x'
  | 'point-y'
  | 'scale'
  | 'turn'
  | 'direction'
  | 'way'
  | 'swing'
  | 'last-swing'
  | 'loop'
  | MoveNumber;

/** A plain number of a move. */
export type MoveNumber = 'sway' | 'sway-time';

export type FieldQuantity = 'width' | 'x' | 'y' | 'turn';

/** What a number may be. */
export type NumberBounds = 'length' | 'size' | 'scale' | 'degrees' | 'frames';
