/** One cut from its bytes to its solved form, with everything that is wrong in it. */

import { createHash } from 'node:crypto';
import { join } from 'node:path';
import type { Host } from '../host/host.js';
import type { RowNotation } from '../language/catalogue/catalogue-entry.js';
import { type Code, catalogue } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import { parse } from '../language/parse.js';
import { inOrder } from '../language/report/report-order.js';
import { currentCode } from '../language/retired-words.js';
import { withoutMark } from '../language/source.js';
import type { StatementOf, Tree } from '../language/tree.js';
import { bind } from '../shot/bind-cut.js';
import { FRAMES_A_FOOT, type Settings } from '../shot/settings.js';
import type { Shot } from '../shot/shot.js';
import { solve } from '../solve/solve-shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { TrackSound } from '../sound/track-sound.js';
import type { CutCache } from './cut-cache.js';
import { shotLimits, textLimits, treeGlyphs, treeLimits } from './cut-limits.js';
import { dictionaryOf } from './english-words.js';
import { artistsOf, type Episode, type EpisodeCache, newEpisodeCache } from './episode.js';
import { STANDARD_INPUT } from './find-cuts.js';
import { fixedAsTyped } from './fixes-as-typed.js';
import { unknownLineUps } from './line-ups.js';
import { withTestedFixes } from './offered-fixes.js';
import { checkOverlaps } from './overlaps.js';
import { decode, readText } from './read-text.js';
import { addedTwice, findReused, nothingReused, type Reused, reusedInVain } from './reused-levels.js';
import { scansOutside } from './scan-files.js';
import { nothingAround, type Surroundings, storyOf, surroundingsOf } from './story.js';
import { findTrack, soundDigest } from './track-file.js';
import { findUses } from './used-files.js';

export interface Compiled {
  /** What messages call the cut. */
  readonly file: string;
  /** Texts by the names that spans give, as far as they could be read: the cut, what it uses, the manifest. */
  readonly sources: ReadonlyMap<string, string>;
  readonly tree: Tree | null;
  readonly shot: Shot | null;
  /** Null where errors of the text leave nothing to solve. There may be errors beside it. */
  readonly solved: SolvedShot | null;
  /** The cut's recording, absolute; null where there is none that may be read. Not for output: paths of machines stay out of it. */
  readonly trackPath: string | null;
  /** Of all stages and of the manifest, in order: the manifest's, the cut's, those of used files. */
  readonly diagnostics: readonly Diagnostic[];
  /** A short hash of all that the cut says, and of what other cuts add to its sheet. */
  readonly digest: string;
  /** The same without what others add: what a level that they reuse hangs on. */
  readonly ownDigest: () => string;
  /** What other cuts have to do with it. */
  readonly surroundings: Surroundings;
  /** Holds nothing but what other cuts use: there is nothing to print, and nothing wrong. */
  readonly house: boolean;
}

/** Where a cut's text comes from, where it is not simply the file of that path; `cache` is shared by a run. */
export interface Source {
  /** What messages call it. */
  readonly name?: string;
  /** Its bytes, for standard input. */
  readonly bytes?: Uint8Array;
  readonly cache?: EpisodeCache;
  /** The cut is compiled only for this level, which another one reuses: it is not looked at as a cut of the story. */
  readonly lends?: string;
  /** What was made of the same cut before. */
  readonly cutCache?: CutCache;
  /** The text is only tried: nobody will see the fixes of its messages. */
  readonly trial?: boolean;
}

/** Compiles the cut at an absolute path. Never throws on any text. */
export function compile(host: Host, path: string | null, episode: Episode, source: Source = {}): Compiled {
  const file = source.name ?? path ?? STANDARD_INPUT;
  const cache = source.cache ?? newEpisodeCache();
  const sources = new Map<string, string>();
  if (episode.file) sources.set(episode.file, episode.text);
  const place = path ?? join(host.cwd, '-');
  const read = source.bytes ? decode(file, source.bytes) : readText(host, place, file);
  if (read.ok || read.text !== '') sources.set(file, read.text);
  if (!read.ok) {
    return {
      file,
      sources,
      tree: null,
      shot: null,
      solved: null,
      trackPath: null,
      diagnostics: inOrder([...episode.diagnostics, ...read.diagnostics], sources),
      digest: '',
      ownDigest: () => '',
      surroundings: nothingAround,
      house: false,
    };
  }
  const { cutCache } = source;
  const parsed = parse(file, read.text, cutCache?.readings);
  const used = findUses(host, place, parsed.tree, episode.folder, cache);
  for (const [name, text] of used.sources) sources.set(name, text);
  const house = isHouse(parsed.tree);
  const diagnostics = [...parsed.diagnostics, ...used.diagnostics];
  for (const tree of [parsed.tree, ...used.trees])
    diagnostics.push(...treeGlyphs(tree, sources.get(tree.file) ?? ''));
  let shot: Shot | null = null;
  let solved: SolvedShot | null = null;
  let digests: Reused['digests'] = [];
  let trackPath: string | null = null;
  const trees = [parsed.tree, ...used.trees];
  const large = treeLimits(trees);
  diagnostics.push(...large);
  if (!house && large.length === 0) {
    const unread = used.diagnostics.some(({ severity }) => severity === 'error');
    const dictionary = dictionaryOf(host);
    const recall = cutCache?.recall({ main: parsed.tree, used: used.trees, sources });
    const bound = bind(parsed.tree, used.trees, episode.settings, {
      unread,
      dictionary,
      ...(recall ? { recall: recall.timeline } : {}),
    });
    diagnostics.push(...bound.diagnostics);
    shot = bound.shot && withArtists(bound.shot, episode);
    const beyond = shot ? shotLimits(shot) : [];
    diagnostics.push(...beyond);
    if (shot && beyond.length === 0) {
      const { lends } = source;
      const story = storyOf(host, episode, cache);
      const others = (other: string, level: string) => compile(host, other, episode, { cache, lends: level });
      const reused = story ? findReused({ shot, only: lends ?? null }, story, cache, others) : nothingReused;
      const track = findTrack(host, place, shot, episode.folder);
      trackPath = track?.path ?? null;
      diagnostics.push(...(track?.diagnostics ?? []));
      solved = solve(shot, {
        reused: reused.levels,
        sound: track?.sound ?? null,
        ...(recall ? { recall: recall.level(shot) } : {}),
      });
      digests = reused.digests;
      if (story && lends === undefined) diagnostics.push(...unknownLineUps(shot, story));
      diagnostics.push(...reused.diagnostics, ...solved.diagnostics, ...reusedInVain(solved, reused));
      if (story && lends === undefined) diagnostics.push(...addedTwice(solved, story, cache, others));
      const around = lends === undefined ? story?.around(path, shot.cut) : null;
      if (around) {
        const joins = checkOverlaps({ shot, tree: parsed.tree, text: read.text }, around);
        diagnostics.push(...joins.diagnostics);
        for (const [name, text] of joins.sources) if (!sources.has(name)) sources.set(name, text);
      }
    }
  }
  let surroundings: Surroundings | null = null;
  diagnostics.push(...textLimits(trees, sources), ...scansOutside(host, place, trees, episode.folder));
  // What is wrong in the manifest is told once a run, and makes no cut one with errors that others cannot take levels from.
  const found = inOrder(
    [
      ...(source.lends === undefined ? episode.diagnostics : []),
      ...withoutAccepted(diagnostics, parsed.tree, solved !== null),
    ],
    sources,
  );
  const tried = (text: string) => {
    const bytes = Buffer.from(text, 'utf8');
    const { tree, diagnostics } = compile(host, path, episode, { name: file, bytes, cache, trial: true });
    return tree && { tree, diagnostics };
  };
  const notation = rowNotation(episode.settings, shot);
  const untested = source.trial || source.lends !== undefined;
  const texts = [read.text, ...used.trees.map((tree) => sources.get(tree.file) ?? '')];
  const artists = shot?.artists ?? [];
  const own: OwnTexts = { texts, digests, sound: solved?.track?.sound ?? null };
  return {
    file,
    sources,
    tree: parsed.tree,
    shot,
    solved,
    trackPath,
    diagnostics: untested
      ? found
      : withTestedFixes(
          {
            tree: parsed.tree,
            diagnostics: found.map((one) => ({
              ...fixedAsTyped(one, file, withoutMark(read.text)),
              rows: notation,
            })),
          },
          withoutMark(read.text),
          tried,
        ),
    // Only what is printed or lent has use for these two.
    get digest() {
      const { neighbours, lent } = this.surroundings;
      const { before, after } = neighbours;
      const around = before || after || lent.length > 0 ? [JSON.stringify([before, after, lent])] : [];
      return digest([...allTexts(own), ...around], episode.settings, artists);
    },
    ownDigest: ownDigestOf(own, episode.settings, artists),
    get surroundings() {
      surroundings ??= shot ? surroundingsOf(host, path, shot, episode, cache) : nothingAround;
      return surroundings;
    },
    house,
  };
}

/** How the sheet of a cut names its rows; where there is no cut yet, with the frames of a second of the episode. */
function rowNotation({ convention, fps }: Settings, shot: Shot | null): RowNotation {
  return convention === 'west'
    ? { unit: FRAMES_A_FOOT, feet: true }
    : { unit: Math.max(1, Math.round(shot?.fps ?? fps)), feet: false };
}

/** Who draws a cut: the cut's own word, or else the manifest's. */
function withArtists(shot: Shot, episode: Episode): Shot {
  if (shot.artists.length > 0) return shot;
  const artists = artistsOf(episode, shot.cut);
  return artists.length > 0 ? { ...shot, artists } : shot;
}

/** Only statements that other cuts may use, and none that makes a cut. */
export function isHouse(tree: Tree): boolean {
  const shared = new Set(['use', 'phrase', 'level', 'field']);
  const broken = tree.broken.some(({ word }) => !shared.has(word));
  return tree.statements.length > 0 && !broken && tree.statements.every(({ kind }) => shared.has(kind));
}

/** What changes the meaning of a cut, not its look: the same text on other paper keeps its stamp. */
const MEANING = [
  'title',
  'episode',
  'fps',
  'on',
  'numbering',
  'field',
  'fields',
  'artwork',
  'output',
  'scanDpi',
  'overlap',
] as const satisfies readonly (keyof Settings)[];

/**
 * A short hash of all that a cut says: its text, the files that it uses, the settings that matter and who draws it.
 * Line ends do not count, so that a checkout on another system has the same stamp.
 */
export function digest(texts: readonly string[], settings: Settings, artists: readonly string[]): string {
  const hash = createHash('sha256');
  const add = (text: string) => {
    const bytes = Buffer.from(text.replace(/\r\n?/g, '\n'), 'utf8');
    hash.update(`${bytes.length}:`).update(bytes);
  };
  for (const text of texts) add(text);
  add(JSON.stringify([MEANING.map((key) => settings[key]), artists]));
  return hash.digest('hex').slice(0, 10);
}

/** What a cut hangs on that stands in its own text, in those that it uses, and in the cuts whose levels it reuses. */
interface OwnTexts {
  readonly texts: readonly string[];
  readonly digests: Reused['digests'];
  readonly sound: TrackSound | null;
}

function allTexts({ texts, digests, sound }: OwnTexts): readonly string[] {
  return [...texts, ...digests.map((made) => made()), ...(sound ? [soundDigest(sound)] : [])];
}

/** A function of its own, which holds nothing of the cut but what it needs: it lives as long as a level that was lent. */
function ownDigestOf(own: OwnTexts, settings: Settings, artists: readonly string[]): () => string {
  let made: string | undefined;
  return () => {
    made ??= digest(allTexts(own), settings, artists);
    return made;
  };
}

// ---- `accept CODE "reason"`: warnings and hints of one cut that somebody has looked at

/**
 * What is left of a cut's messages. `whole`: all stages have said what they had to say; only then an `accept` that silences
 * nothing is worth a hint, and not beside errors, which keep later stages from finding more.
 */
function withoutAccepted(diagnostics: readonly Diagnostic[], tree: Tree, whole: boolean): Diagnostic[] {
  const accepts = tree.statements.filter((statement) => statement.kind === 'accept');
  if (accepts.length === 0) return [...diagnostics];
  const accepted = new Set(accepts.map(({ code }) => currentCode(code.text)));
  const silent = ({ code, severity }: Diagnostic): boolean => severity !== 'error' && accepted.has(code);
  const left = diagnostics.filter((one) => !silent(one));
  const silenced = new Set<string>(diagnostics.filter(silent).map(({ code }) => code));
  if (whole && !hasErrors(diagnostics)) {
    const idle = accepts.filter(
      ({ code }) => Object.hasOwn(catalogue, code.text) && !silenced.has(currentCode(code.text)),
    );
    const others = idle.filter(({ code }) => code.text !== UNUSED);
    // Who accepts idle lines has an idle line of his own where there is no other.
    if (others.length === 0) return [...left, ...idle.map(hint)];
    if (!accepted.has(UNUSED)) return [...left, ...others.map(hint)];
  }
  return left;
}

const UNUSED: Code = 'accept-unused';

function hint({ code: { text }, span }: StatementOf<'accept'>): Diagnostic {
  const fix = { action: 'leave-out', edits: [{ span, text: '' }] } as const;
  return diagnose(UNUSED, span, { accepted: text }, { fix });
}
