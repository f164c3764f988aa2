/** An episode as its manifest describes it, or what holds for a cut that has none. */

import type { Production } from '../count/count-stages.js';
import { USUAL_STAGES } from '../count/stage-states.js';
import type { NotLent, RowsFault } from '../language/catalogue/message-terms.js';
import type { Diagnostic, Span } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { mostRows } from '../sheet/sheet-geometry.js';
import { CONVENTIONAL, defaults, FRAMES_A_FOOT, type Settings } from '../shot/settings.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import type { EpisodeTexts } from './cut-texts.js';
import type { StoryCut, StoryOrder } from './story.js';

/** A piece of the manifest's text with its place. */
export interface Written {
  readonly text: string;
  readonly span: Span;
}

export interface Episode {
  /** What messages call the manifest, or null: there is none. */
  readonly file: string | null;
  /** Absolute path of the folder in which the manifest stands, or null. */
  readonly folder: string | null;
  /** The manifest's text, '' without one. */
  readonly text: string;
  readonly settings: Settings;
  /** Running time allowed, in frames. */
  readonly budgetFrames: number | null;
  /** Where the manifest says so. */
  readonly budgetSpan: Span | null;
  /** Who draws which cuts, in the order of writing. */
  readonly artists: readonly { readonly name: Written; readonly cuts: readonly Written[] }[];
  /** Files and patterns in story order; null where the manifest names none. */
  readonly cuts: readonly Written[] | null;
  /** Where the drawings lie, as a name with braces (shot/scan-names.ts), from the manifest's folder; null: nowhere. */
  readonly drawings: Written | null;
  /** Stages, due days and rates. */
  readonly production: Production;
  /** The cuts that have due days of their own. */
  readonly dueCuts: readonly Written[];
  /** Texts of the manifest that are printed on every sheet. */
  readonly printed: readonly Written[];
  readonly diagnostics: readonly Diagnostic[];
}

/** What holds for a cut outside any episode. */
export const noEpisode: Episode = {
  file: null,
  folder: null,
  text: '',
  settings: defaults,
  budgetFrames: null,
  budgetSpan: null,
  artists: [],
  cuts: null,
  drawings: null,
  production: { stages: USUAL_STAGES, due: [], rates: new Map() },
  dueCuts: [],
  printed: [],
  diagnostics: [],
};

/** Names by the cuts' keys; made once for all cuts of an episode. */
const artistsByCut = new WeakMap<Episode['artists'], ReadonlyMap<string, readonly string[]>>();

/** Who draws a cut, as the manifest has it. */
export function artistsOf({ artists }: Episode, cut: string): readonly string[] {
  if (artists.length === 0) return [];
  const known = artistsByCut.get(artists) ?? byCut(artists);
  artistsByCut.set(artists, known);
  return known.get(cutKey(cut)) ?? [];
}

function byCut(artists: Episode['artists']): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { name, cuts } of artists) {
    for (const key of new Set(cuts.map(({ text }) => cutKey(text))))
      names.set(key, [...(names.get(key) ?? []), name.text]);
  }
  return names;
}

/** A cut's number for comparing: full-width forms and leading zeros do not matter. */
export function cutKey(number: string): string {
  if (/^[1-9A-Z][0-9A-Z]*$/.test(number)) return number;
  return number
    .normalize('NFKC')
    .trim()
    .replace(/^0+(?=\d)/, '')
    .toUpperCase();
}

/** A cut's number as it is written, with its place, whatever else is wrong; null where it cannot be read. */
export function writtenNumber(tree: Tree | null): Written | null {
  const statement = tree?.statements.find((one) => one.kind === 'cut');
  return statement?.kind === 'cut' ? { text: statement.number.text, span: statement.number.span } : null;
}

export const cutNumberOf = (tree: Tree | null): string | undefined => writtenNumber(tree)?.text;

/** What the cuts of one run share, so that it is read and solved once. Grows with what is shared, not with the cuts. */
export interface EpisodeCache {
  /** Used files by real path. */
  readonly files: Map<
    string,
    { readonly text: string; readonly tree: Tree; readonly diagnostics: readonly Diagnostic[] }
  >;
  /** Whether what is used lies where it may, by the folder of the user, the path as typed and the episode's folder. */
  readonly reach: Map<string, boolean>;
  /** The cuts of an episode in story order, by the episode's folder. */
  readonly stories: Map<string, StoryOrder>;
  /** Levels that other cuts reuse, by `path` and level; or why there is none. */
  readonly levels: Map<string, BorrowedLevel>;
  /** What a cut hangs on, by episode. */
  readonly texts: Map<Episode, EpisodeTexts>;
  /** Cuts of the stories, by path: of this run, and of the one before, where a text that is the same need not be looked at again. */
  readonly cuts: Map<string, StoryCut>;
  readonly earlierCuts: ReadonlyMap<string, StoryCut>;
}

/** A level of another cut, with the text that it came from; or why there is none, and whether levels that reuse each other are why. */
export type BorrowedLevel =
  | { readonly level: SolvedLevel; readonly digest: () => string }
  | { readonly reason: NotLent; readonly round?: boolean };

/** `earlier`: of a run over the same files, some of which may have changed. */
export function newEpisodeCache(earlier?: Pick<EpisodeCache, 'cuts'>): EpisodeCache {
  return {
    files: new Map(),
    reach: new Map(),
    stories: new Map(),
    levels: new Map(),
    texts: new Map(),
    cuts: new Map(),
    earlierCuts: earlier?.cuts ?? new Map(),
  };
}

/**
 * The same episode with some settings overruled (from the command line). The rows that the episode wants hold only as
 * long as they suit the sheet that comes out.
 */
export function overrideSettings(episode: Episode, settings: Partial<Settings>): Episode {
  if (Object.keys(settings).length === 0) return episode;
  const merged = { ...episode.settings, ...byConvention(episode, settings), ...settings };
  if (settings.rows !== undefined || merged.rows === null) return { ...episode, settings: merged };
  const other = merged.convention !== episode.settings.convention;
  const rows = other || rowsFault(merged.rows, merged) !== null ? null : merged.rows;
  return { ...episode, settings: { ...merged, rows } };
}

/**
 * What another convention brings along: its lengths; and where no manifest says how cuts are drawn, its field and paper too.
 * Artwork that an episode has drawn keeps its size on whichever form it is printed.
 */
function byConvention(episode: Episode, { convention }: Partial<Settings>): Partial<Settings> {
  if (convention === undefined || convention === episode.settings.convention) return {};
  const { lengths, ...drawn } = CONVENTIONAL[convention];
  return episode.file === null ? { ...drawn, lengths } : { lengths };
}

/**
 * What is wrong with a number of rows a page, or null. A western page holds whole feet, a Japanese one whole seconds,
 * so that a heavy rule ends it, and no more of them than can be read on the paper.
 */
export function rowsFault(rows: number, settings: Settings): RowsFault | null {
  const { convention, fps, paper } = settings;
  const unit = convention === 'west' ? FRAMES_A_FOOT : fps;
  const most = Math.max(unit, Math.floor(mostRows(settings) / unit) * unit);
  if (Number.isInteger(rows) && rows >= unit && rows <= most && rows % unit === 0) return null;
  const near = Math.min(most, Math.max(unit, Math.round(rows / unit) * unit));
  return { unit: convention === 'west' ? 'feet' : 'seconds', rows: unit, most, near, paper };
}
