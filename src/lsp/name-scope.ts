/** Which cuts and shared files a name concerns: where it is defined, and everywhere that it is meant. */

import { dirname, join } from 'node:path';
import { newEpisodeCache } from '../episode/episode.js';
import { filesOf } from '../episode/file-patterns.js';
import { type StoryOrder, storyOf } from '../episode/story.js';
import { usesIn } from '../episode/used-files.js';
import type { Span } from '../language/diagnostic.js';
import type { Statement, Tree } from '../language/tree.js';
import { type NameKind, type NameOccurrence, nameIndexOf, spanTouches } from './name-index.js';
import type { Analysis, FileNames, Workspace } from './workspace.js';

export interface NamePlace {
  readonly path: string;
  /** What messages call the file. */
  readonly file: string;
  readonly text: string;
  readonly span: Span;
  readonly defines: boolean;
}

/** A name as one thing, wherever it is written. */
export interface NameSymbol {
  readonly kind: NameKind;
  readonly name: string;
  /** The file that defines it: the cut itself, or one that it uses. */
  readonly home: string;
}

/** What stands under a cursor, with its own span. */
export interface NameUnderCursor {
  readonly symbol: NameSymbol;
  readonly span: Span;
}

/** Statements of a used file that its users share. */
const SHARED = new Set<Statement['kind']>(['phrase', 'level', 'field']);

export class NameScope {
  private readonly files: readonly string[];
  private readonly story: StoryOrder | null;
  private readonly shared = new Map<string, boolean>();

  constructor(
    private readonly workspace: Workspace,
    private readonly analysis: Analysis,
  ) {
    const { episode } = analysis;
    const { world } = workspace;
    const folder = episode.folder;
    const found =
      folder === null ? [] : filesOf(world, folder, '**/*.cut', true).map((file) => join(folder, file));
    const open = [...workspace.open.values()].flatMap(({ path }) =>
      path?.endsWith('.cut') && (folder === null || path.startsWith(folder)) ? [path] : [],
    );
    this.files = [...new Set([...found, ...open])];
    this.story = storyOf(world, episode, newEpisodeCache());
  }

  /** Absolute paths of the texts that may say the same names: those of the episode, and those that are open. */
  texts(): readonly string[] {
    return this.files;
  }

  /** What each text says by itself, in the order of their paths. */
  *ownNames(): Generator<FileNames> {
    for (const path of this.files) {
      const known = this.names(path);
      if (known) yield known;
    }
  }

  private get root(): string | null {
    return this.analysis.episode.folder;
  }

  private names(path: string): FileNames | null {
    return this.workspace.namesOf(path, this.root);
  }

  /** The name under a cursor; in `reuse 8/C` that of the other cut. */
  at(offset: number): NameUnderCursor | null {
    const path = this.analysis.open.path;
    if (path === null) return null;
    const { index } = this.analysis;
    const reuse = index.reuses.find(({ levelSpan }) => spanTouches(levelSpan, offset));
    if (reuse) {
      const lender = this.story?.find(reuse.cut)?.path;
      if (!lender) return null;
      const home = this.homeIn(lender, 'level', reuse.level) ?? lender;
      return { symbol: { kind: 'level', name: reuse.level, home }, span: reuse.levelSpan };
    }
    const found = index.names.find(({ span }) => spanTouches(span, offset));
    if (!found) return null;
    const { kind, name, span } = found;
    return { symbol: { kind, name, home: this.homeOf(path, kind, name) }, span };
  }

  /** The cut that `reuse 8/C` speaks of, where the cursor is on the `8`. */
  lenderAt(offset: number): { path: string; name: string; tree: Tree; text: string } | null {
    const reuse = this.analysis.index.reuses.find(({ cutSpan }) => spanTouches(cutSpan, offset));
    const cut = reuse && this.story?.find(reuse.cut);
    return cut && cut.text !== null
      ? { path: cut.path, name: cut.name, tree: cut.tree, text: cut.text }
      : null;
  }

  /** The file that defines a name as the cut at `path` has it. A name that none defines is the cut's own. */
  private homeOf(path: string, kind: NameKind, name: string): string {
    const home = this.homeIn(path, kind, name);
    if (home !== null) return home;
    // In a shared file the definition may stand in another one that some cut uses beside it.
    for (const user of kind === 'mark' ? [] : this.files) {
      const known = this.mentioning(user, name);
      if (!known?.used.trees.some((tree) => this.workspace.placeOf(tree.file) === path)) continue;
      const found = this.homeIn(user, kind, name);
      if (found !== null) return found;
    }
    return path;
  }

  private homeIn(path: string, kind: NameKind, name: string): string | null {
    const known = this.names(path);
    if (!known) return null;
    const own = known.index.names.some(
      (one) => one.kind === kind && one.name === name && definesForOthers(one),
    );
    if (own || kind === 'mark') return path;
    const tree = known.used.trees.find((used) => definedIn(used, kind, name));
    return tree ? this.workspace.placeOf(tree.file) : null;
  }

  /** The names of a file that may speak of this one, itself or by what it uses; null where it cannot. */
  private mentioning(path: string, name: string): FileNames | null {
    const known = this.names(path);
    if (!known) return null;
    if (mayHoldName(known.text, name)) return known;
    const uses = usesIn(known.text);
    if (uses.length === 0) return null;
    // Cuts of a folder that use the same are asked once.
    const id = JSON.stringify([name, dirname(path), uses]);
    const found =
      this.shared.get(id) ?? [...known.used.sources.values()].some((text) => mayHoldName(text, name));
    this.shared.set(id, found);
    return found ? known : null;
  }

  /** Every place that means the name, definitions first, then by file and place. */
  places({ kind, name, home }: NameSymbol): NamePlace[] {
    const found = new Map<string, NamePlace>();
    const put = (
      path: string,
      file: string,
      text: string,
      { span, defines }: Pick<NameOccurrence, 'span' | 'defines'>,
    ): void => {
      const id = `${path}\0${span.start}`;
      if (!found.has(id)) found.set(id, { path, file, text, span, defines });
    };
    const roots = kind === 'mark' ? [home] : [...new Set([home, ...this.files])];
    const cuts = new Set<string>();
    for (const path of roots) {
      const known = this.mentioning(path, name);
      if (!known || (path !== home && this.homeIn(path, kind, name) !== home)) continue;
      cuts.add(path);
      for (const one of known.index.names) {
        if (one.kind === kind && one.name === name) put(path, known.name, known.text, one);
      }
      for (const tree of known.used.trees) {
        const text = known.used.sources.get(tree.file)!;
        for (const one of sharedNames(tree, text)) {
          if (one.kind === kind && one.name === name)
            put(this.workspace.placeOf(tree.file), tree.file, text, one);
        }
      }
    }
    if (kind === 'level') this.reusers(name, cuts, put);
    return [...found.values()].sort(
      (a, b) =>
        Number(b.defines) - Number(a.defines) ||
        (a.path < b.path ? -1 : a.path > b.path ? 1 : a.span.start - b.span.start),
    );
  }

  /** `reuse 8/C` in other cuts, where cut 8 is one of those. */
  private reusers(
    name: string,
    cuts: ReadonlySet<string>,
    put: (path: string, file: string, text: string, place: { span: Span; defines: boolean }) => void,
  ): void {
    for (const path of this.files) {
      const known = this.mentioning(path, name);
      if (!known) continue;
      for (const { cut, level, levelSpan } of known.index.reuses) {
        const lender = level === name ? this.story?.find(cut)?.path : undefined;
        if (lender !== undefined && cuts.has(lender))
          put(path, known.name, known.text, { span: levelSpan, defines: false });
      }
    }
  }

  /** The cuts that mean the name, with all names that each of them knows of that kind. */
  others({ kind, name, home }: NameSymbol): { file: string; names: ReadonlySet<string> }[] {
    const roots = kind === 'mark' ? [home] : [...new Set([home, ...this.files])];
    return roots.flatMap((path) => {
      const known = this.mentioning(path, name);
      if (!known || (path !== home && this.homeIn(path, kind, name) !== home)) return [];
      const all = [
        ...known.index.names,
        ...known.used.trees.flatMap((tree) => sharedNames(tree, known.used.sources.get(tree.file)!)),
      ];
      const names = new Set(all.filter((one) => one.kind === kind).map((one) => one.name));
      return [{ file: known.name, names }];
    });
  }

  /** Cuts of the episode in story order. */
  cuts(): readonly { number: string; title: string; path: string }[] {
    return (this.story?.cuts() ?? []).map(({ number, tree, path }) => {
      const cut = tree.statements.find(({ kind }) => kind === 'cut');
      return { number, path, title: cut?.kind === 'cut' ? (cut.title?.text ?? '') : '' };
    });
  }

  /** The levels of another cut with their titles. */
  levelsOf(cut: string): readonly { name: string; title: string }[] {
    const path = this.story?.find(cut)?.path;
    const known = path === undefined ? null : this.names(path);
    const levels = new Map<string, string>();
    for (const { kind, name, statement } of known?.index.names ?? []) {
      if (kind !== 'level') continue;
      const title =
        statement.kind === 'timeline'
          ? statement.title?.text
          : statement.kind === 'mouth'
            ? statement.speaker.text
            : undefined;
      levels.set(name, title ?? levels.get(name) ?? '');
    }
    return [...levels].map(([name, title]) => ({ name, title }));
  }
}

const plain = (text: string): string => text.normalize('NFKC');

/** Whether a text may hold a name, in whatever width. */
function mayHoldName(text: string, name: string): boolean {
  return text.includes(name) || plain(text).includes(plain(name));
}

/** Whether an occurrence makes a name that other files may then share: a level is made by `level`, not by its timeline. */
function definesForOthers({ kind, defines, statement }: NameOccurrence): boolean {
  return defines && (kind !== 'level' || statement.kind === 'level');
}

function definedIn(tree: Tree, kind: NameKind, name: string): boolean {
  return tree.statements.some((one) => {
    if (one.kind !== kind) return false;
    if (one.kind === 'level') return one.level.text === name;
    return (one.kind === 'phrase' || one.kind === 'field') && one.name.text === name;
  });
}

const shared = new WeakMap<Tree, readonly NameOccurrence[]>();

/** The names of a file that those who use it may say. */
export function sharedNames(tree: Tree, text: string): readonly NameOccurrence[] {
  const known =
    shared.get(tree) ?? nameIndexOf(tree, text).names.filter(({ statement }) => SHARED.has(statement.kind));
  shared.set(tree, known);
  return known;
}
