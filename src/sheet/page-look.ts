import type { Settings } from '../shot/settings.js';
import type { Dictionary } from '../sound/pronunciation.js';
import type { Metrics } from './display-list.js';

/** Numbers of the cuts before and after this one, where they are known. */
export interface Neighbours {
  readonly before?: string;
  readonly after?: string;
}

/** A level of this cut that another cut shows again. */
export interface LentLevel {
  readonly level: string;
  /** The other cut's number, and its level's name. */
  readonly cut: string;
  readonly as: string;
}

/** Where something stands on the rows of a sheet. */
export type RowPlace =
  | { readonly kind: 'level'; readonly level: string }
  | { readonly kind: 'speech' | 'camera' | 'notes' };

/** A column that has change bars of its own: of a level that of its keys and that of its finished numbers. */
export type BarPlace =
  | { readonly kind: 'level'; readonly level: string; readonly column: 'keys' | 'cels' }
  | { readonly kind: 'speech' | 'camera' | 'notes' };

/** What differs from another version of the cut. */
export interface MarkedChanges {
  /** The other version as it was named: `HEAD~1`, `take-1`. */
  readonly against: string;
  /** Frames from..to, both included, that get a change bar. */
  readonly rows: readonly { readonly place: BarPlace; readonly from: number; readonly to: number }[];
  /** Passages whose ladders get a change bar, by their keys. */
  readonly ladders: readonly { readonly level: string; readonly from: string; readonly to: string }[];
  /** What has changed, as lines for the memo, in the language of the form. */
  readonly lines: readonly string[];
}

/** Where a cut stands in production, for the front of its envelope. Days are ISO 8601; persons and notes are fit for paper. */
export interface CutProduction {
  readonly stages: readonly {
    readonly stage: string;
    readonly state: 'open' | 'started' | 'done' | 'retake';
    /** Of its state; '' while open. */
    readonly date: string;
    readonly person: string;
    readonly due: string | null;
  }[];
  readonly retakes: readonly {
    readonly stage: string;
    readonly date: string;
    readonly person: string;
    readonly note: string;
  }[];
}

/** How pages are to look: the choices of the episode or the command line, and what the layout must be told. */
export interface PageLook {
  /** Convention, labels, paper and rows are taken from here, not from the shot: any mix is allowed. */
  readonly settings: Settings;
  readonly metrics: Metrics;
  /** How English words are pronounced; without it, by their spelling. */
  readonly dictionary?: Dictionary | undefined;
  /** Printed at the foot of every page: short hash of the text, commit. May be ''. */
  readonly stamp: string;
  /** With whom the cut overlaps. */
  readonly neighbours?: Neighbours | undefined;
  /** Levels of this cut that other cuts reuse. */
  readonly lent?: readonly LentLevel[] | undefined;
  /** Where the cut stands; only where its cover is printed. */
  readonly production?: CutProduction | undefined;
  /** Changes since another version, to be marked. */
  readonly marked?: MarkedChanges | undefined;
}
