/** An episode as its manifest describes it, or what holds for a cut that has none. */

import type { Diagnostic, Span } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { defaults, type Settings } from '../shot/settings.js';

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
  return number
    .normalize('NFKC')
    .trim()
    .replace(/^0+(?=\d)/, '')
    .toUpperCase();
}

/** A cut's number as it is written, whatever else is wrong; undefined where it cannot be read. */
export function cutNumberOf(tree: Tree | null): string | undefined {
  const statement = tree?.statements.find((one) => one.kind === 'cut');
  return statement?.kind === 'cut' ? statement.number.text : undefined;
}
