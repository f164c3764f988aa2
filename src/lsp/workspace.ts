/** What an editor has open, and what the program makes of it. Everything that was computed is kept until something it read changes. */

import { basename, dirname, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { CutCache } from '../episode/cut-cache.js';
import type { Episode } from '../episode/episode.js';
import { episodeOf, MANIFEST } from '../episode/find-cuts.js';
import { readText } from '../episode/read-text.js';
import { findUses, type Used } from '../episode/used-files.js';
import type { Host } from '../host/host.js';
import { type Asked, noting, overlay } from '../host/overlay-host.js';
import { type Parsed, parse } from '../language/parse.js';
import type { UserLanguage } from '../language/user-language.js';
import { DocumentText, type Encoding } from './document-text.js';
import { type NameIndex, nameIndexOf } from './name-index.js';

export interface OpenDocument {
  readonly uri: string;
  /** Null for a text that is no file yet. */
  readonly path: string | null;
  readonly version: number;
  readonly text: DocumentText;
}

/** An open text and what came of it. */
export interface Analysis {
  readonly open: OpenDocument;
  /** What messages call it. */
  readonly name: string;
  readonly text: DocumentText;
  readonly episode: Episode;
  /** Null for a manifest. */
  readonly compiled: Compiled | null;
  /** Tokens and comments; read at the first question. */
  readonly parsed: Parsed;
  readonly index: NameIndex;
  /** In which messages and the reference are told. */
  readonly language: UserLanguage;
}

/** A cut of the disk or of the editor, as far as its names go. */
export interface FileNames {
  readonly path: string;
  /** What messages call it. */
  readonly name: string;
  readonly text: string;
  readonly parsed: Parsed;
  readonly index: NameIndex;
  readonly used: Used;
}

interface CacheEntry<T> {
  readonly value: T;
  readonly asked: Asked;
}

export class Workspace {
  /** By uri. */
  readonly open = new Map<string, OpenDocument>();
  encoding: Encoding = 'utf-16';
  /** That of the editor's own menus, where it says; its tables have to be loaded. */
  language: UserLanguage = 'en';
  private readonly texts = new Map<string, string>();
  private disk: Host;
  private host: Host;
  private readonly analyses = new Map<string, CacheEntry<Analysis>>();
  private readonly cutCaches = new Map<string, CutCache>();
  private readonly episodes = new Map<string, CacheEntry<Episode>>();
  private readonly names = new Map<string, CacheEntry<FileNames | null>>();
  /** By path: the texts of the episode that are not open and were checked, with what each hangs on. */
  private readonly checked = new Map<string, Asked>();
  /** Absolute paths of texts that are not open and have to be checked (again). */
  readonly unchecked = new Set<string>();
  /** Counts what changes, so that what was begun before a change is not kept. */
  private changes = 0;

  constructor(host: Host) {
    this.disk = host;
    this.host = overlay(host, this.texts);
  }

  get cwd(): string {
    return this.disk.cwd;
  }

  /** The folder that names in messages are told from. */
  root(folder: string): void {
    this.disk = { ...this.disk, cwd: folder };
    this.host = overlay(this.disk, this.texts);
    this.forget();
  }

  /** Takes what the editor holds now; gives all open texts that have to be looked at again, this one first. */
  put(uri: string, version: number, text: DocumentText): OpenDocument[] {
    const path = pathOf(uri);
    const open: OpenDocument = { uri, path, version, text };
    const isNew = !this.open.has(uri);
    this.open.set(uri, open);
    this.analyses.delete(uri);
    if (path === null) return [open];
    this.checked.delete(path);
    this.unchecked.delete(path);
    const real = this.disk.real(path);
    this.texts.set(real, text.raw);
    return [open, ...this.stale(real, isNew)];
  }

  /** What lies on the disk counts again. Gives the open texts for which that may matter; null where it was not open at all. */
  close(uri: string): OpenDocument[] | null {
    if (!this.open.delete(uri)) return null;
    this.analyses.delete(uri);
    this.cutCaches.delete(uri);
    const path = pathOf(uri);
    if (path === null) return [];
    this.texts.delete(this.disk.real(path));
    this.unchecked.add(path);
    return this.appeared(path);
  }

  newText(raw: string): DocumentText {
    return new DocumentText(raw, this.encoding);
  }

  /** Forgets what was made of a file whose text has changed, and gives the open texts for which that may matter. */
  touched(path: string): OpenDocument[] {
    return this.stale(this.disk.real(path), false);
  }

  /** The same for a file that has appeared or gone. */
  appeared(path: string): OpenDocument[] {
    return this.stale(this.disk.real(path), true);
  }

  /** Forgets everything. */
  forget(): void {
    this.changes++;
    this.analyses.clear();
    this.episodes.clear();
    this.names.clear();
    for (const path of this.checked.keys()) this.unchecked.add(path);
    this.checked.clear();
  }

  private stale(path: string, folders: boolean): OpenDocument[] {
    this.changes++;
    const matters = ({ asked }: CacheEntry<unknown>): boolean =>
      asked.files.has(path) || (folders && asked.folders.has(dirname(path)));
    for (const kept of [this.episodes, this.names]) {
      for (const [key, one] of kept) if (matters(one)) kept.delete(key);
    }
    for (const [other, asked] of this.checked) {
      if (!matters({ value: null, asked })) continue;
      this.checked.delete(other);
      this.unchecked.add(other);
    }
    const found: OpenDocument[] = [];
    for (const [uri, one] of this.analyses) {
      if (!matters(one)) continue;
      this.analyses.delete(uri);
      const open = this.open.get(uri);
      if (open) found.push(open);
    }
    return found;
  }

  /** What came of an open text as it stands now; null where it is not open. */
  async analysis(uri: string): Promise<Analysis | null> {
    for (;;) {
      const open = this.open.get(uri);
      if (!open) return null;
      const known = this.analyses.get(uri);
      if (known && known.value.open === open) return known.value;
      const changes = this.changes;
      const kept = await this.episode(open.path === null ? this.cwd : dirname(open.path));
      if (this.changes !== changes || this.open.get(uri) !== open) continue;
      const asked: Asked = { files: new Set(kept.asked.files), folders: new Set(kept.asked.folders) };
      const value = this.analyse(open, kept.value, noting(this.host, asked));
      this.analyses.set(uri, { value, asked });
      return value;
    }
  }

  /** What comes of a text that is not open; null where there is none. It counts as checked until something it hangs on changes. */
  async closedAnalysis(path: string): Promise<Analysis | null> {
    this.unchecked.delete(path);
    const kept = await this.episode(dirname(path));
    const asked: Asked = { files: new Set(kept.asked.files), folders: new Set(kept.asked.folders) };
    const host = noting(this.host, asked);
    const { ok, text } = readText(host, path, this.nameOf(path));
    this.checked.set(path, asked);
    if (!ok && text === '') return null;
    const open = { uri: this.uriOf(path), path, version: 0, text: this.newText(text) };
    return this.analyse(open, kept.value, host, null);
  }

  private analyse(
    open: OpenDocument,
    episode: Episode,
    host: Host,
    cutCache: CutCache | null = this.cutCacheOf(open.uri),
  ): Analysis {
    const { path, text } = open;
    const manifest = path !== null && basename(path) === MANIFEST;
    const name = manifest && episode.file ? episode.file : this.nameOf(path ?? open.uri);
    const bytes = path === null ? { bytes: Buffer.from(text.raw, 'utf8') } : {};
    const known = cutCache ? { cutCache } : {};
    const compiled = manifest ? null : compile(host, path, episode, { name, ...bytes, ...known });
    let parsed: Parsed | null = null;
    let index: NameIndex | null = null;
    return {
      open,
      name,
      text,
      episode,
      compiled,
      language: this.language,
      get parsed() {
        parsed ??= parse(name, manifest ? '' : text.text);
        return parsed;
      },
      get index() {
        index ??= nameIndexOf(compiled?.tree ?? this.parsed.tree, text.text);
        return index;
      },
    };
  }

  private cutCacheOf(uri: string): CutCache {
    const known = this.cutCaches.get(uri) ?? new CutCache();
    this.cutCaches.set(uri, known);
    return known;
  }

  /** What would come of an open text if it said something else. Nothing of it is kept. */
  tried({ open, name, episode }: Analysis, typed: string): Pick<Analysis, 'compiled'> {
    const bytes = Buffer.from(typed, 'utf8');
    return { compiled: compile(this.host, open.path, episode, { name, bytes, trial: true }) };
  }

  /** The episode that a folder belongs to, with what it was made of. */
  private async episode(folder: string): Promise<CacheEntry<Episode>> {
    for (;;) {
      const known = this.episodes.get(folder);
      if (known) return known;
      const changes = this.changes;
      const asked: Asked = { files: new Set(), folders: new Set() };
      const kept = { value: await episodeOf(noting(this.host, asked), folder), asked };
      if (this.changes !== changes) continue;
      this.episodes.set(folder, kept);
      return kept;
    }
  }

  async episodeOf(folder: string): Promise<Episode> {
    return (await this.episode(folder)).value;
  }

  /** The names of a cut at a path; null where there is no text. `root`: the folder of its episode. */
  namesOf(path: string, root: string | null): FileNames | null {
    const known = this.names.get(path);
    if (known) return known.value;
    const asked: Asked = { files: new Set(), folders: new Set() };
    const host = noting(this.host, asked);
    const name = this.nameOf(path);
    const read = readText(host, path, name);
    let value: FileNames | null = null;
    if (read.ok) {
      let parsed: Parsed | null = null;
      let index: NameIndex | null = null;
      let used: Used | null = null;
      // Read only as far as it is asked: of hundreds of cuts few say a name.
      value = {
        path,
        name,
        text: read.text,
        get parsed() {
          parsed ??= parse(name, read.text);
          return parsed;
        },
        get index() {
          index ??= nameIndexOf(this.parsed.tree, read.text);
          return index;
        },
        get used() {
          used ??= findUses(host, path, this.parsed.tree, root);
          return used;
        },
      };
    }
    this.names.set(path, { value, asked });
    return value;
  }

  /** The world as the editor sees it. */
  get world(): Host {
    return this.host;
  }

  private nameOf(path: string): string {
    return path.startsWith('/') ? relative(this.cwd, path) || path : path;
  }

  /** Where the file lies that messages call so. */
  placeOf(name: string): string {
    return resolve(this.cwd, name);
  }

  /** The uri of a file: that of the editor where it has it open. */
  uriOf(path: string): string {
    const real = this.disk.real(path);
    for (const { uri, path: open } of this.open.values()) {
      if (open !== null && (open === path || this.disk.real(open) === real)) return uri;
    }
    return pathToFileURL(path).href;
  }
}

export function isManifest({ open: { path } }: Pick<Analysis, 'open'>): boolean {
  return path !== null && basename(path) === MANIFEST;
}

export function pathOf(uri: string): string | null {
  if (!uri.startsWith('file:')) return null;
  try {
    return fileURLToPath(uri);
  } catch {
    return null;
  }
}
