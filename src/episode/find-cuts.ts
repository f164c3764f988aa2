/** From what stands on the command line to the cuts that are meant, each with its episode. */

import { basename, dirname, join, normalize, relative, resolve, sep } from 'node:path';
import type { Host } from '../host/host.js';
import type { Messages } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { Settings } from '../shot/settings.js';
import { type Episode, noEpisode, overrideSettings, type Written } from './episode.js';
import { filesOf, isPattern, leadsOut } from './file-patterns.js';
import { neighbours } from './read-text.js';

/** The manifest's name. */
export const MANIFEST = 'episode.yaml';
/** What stands beside it, where somebody keeps it: what has happened to each cut. */
export const PROGRESS_FILE = 'progress.csv';

/** A cut to be worked on. */
export interface Job {
  /** Absolute path, or null: standard input. */
  readonly path: string | null;
  /** What messages call it: relative where it can be. */
  readonly name: string;
  readonly episode: Episode;
  /** Named itself, not found in a folder or a manifest. */
  readonly named: boolean;
}

export interface Found {
  readonly jobs: readonly Job[];
  /** Every manifest that was read. */
  readonly episodes: readonly Episode[];
  /** Episodes that are worked on as a whole. */
  readonly whole: readonly Episode[];
  readonly diagnostics: readonly Diagnostic[];
}

/** What standard input is called in messages. */
export const STANDARD_INPUT = 'standard input';

/** `args`: files, folders, manifests, or `-`. `settings` overrule those of every episode. Never throws. */
export async function findCuts(
  host: Host,
  args: readonly string[],
  settings: Partial<Settings> = {},
): Promise<Found> {
  const finder = new Finder(host, settings);
  for (const arg of args) await finder.add(arg);
  return finder.found();
}

/** The episode that a folder (absolute) belongs to, found by walking up. */
export async function episodeOf(
  host: Host,
  folder: string,
  settings: Partial<Settings> = {},
): Promise<Episode> {
  return new Finder(host, settings).episodeOf(folder);
}

class Finder {
  private readonly jobs: Job[] = [];
  private readonly diagnostics: Diagnostic[] = [];
  private readonly taken = new Set<string>();
  private readonly byManifest = new Map<string, Episode>();
  private readonly byFolder = new Map<string, Episode>();
  private readonly whole: Episode[] = [];

  constructor(
    private readonly host: Host,
    private readonly settings: Partial<Settings>,
  ) {}

  found(): Found {
    const { jobs, diagnostics, whole } = this;
    return { jobs, diagnostics, whole, episodes: [...this.byManifest.values()] };
  }

  async add(arg: string): Promise<void> {
    if (arg === '-') {
      const episode = await this.episodeOf(this.host.cwd);
      if (!this.taken.has(arg)) this.jobs.push({ path: null, name: STANDARD_INPUT, episode, named: true });
      this.taken.add(arg);
      return;
    }
    const path = resolve(this.host.cwd, arg);
    const name = normalize(arg).replace(/(?<=[^/])\/$/, '');
    const kind = this.host.kind(path);
    if (kind === 'none') this.missing(path, name);
    else if (kind === 'folder') await this.folder(path, name);
    else if (/\.ya?ml$/.test(path)) this.fromManifest(await this.open(path, name));
    else this.take(path, name, await this.episodeOf(dirname(path)), true);
  }

  async episodeOf(folder: string): Promise<Episode> {
    const known = this.byFolder.get(folder);
    if (known) return known;
    const path = join(folder, MANIFEST);
    const up = dirname(folder);
    const episode =
      this.host.kind(path) === 'file'
        ? await this.open(path, this.shown(path))
        : up === folder
          ? overrideSettings(noEpisode, this.settings)
          : await this.episodeOf(up);
    this.byFolder.set(folder, episode);
    return episode;
  }

  /** The YAML reader is loaded only where there is a manifest. */
  private async open(path: string, name: string): Promise<Episode> {
    const known = this.byManifest.get(path);
    if (known) return known;
    const { openEpisode } = await import('./manifest.js');
    const episode = overrideSettings(openEpisode(this.host, path, name), this.settings);
    this.byManifest.set(path, episode);
    return episode;
  }

  private missing(path: string, name: string): void {
    const offer = nearest(basename(path), neighbours(this.host, path));
    const file = offer === undefined ? undefined : join(dirname(name), offer);
    this.diagnostics.push(
      diagnose('file-missing', { file: name, start: 0, end: 0 }, { variant: 'nothing', guess: file ?? null }),
    );
  }

  private async folder(path: string, name: string): Promise<void> {
    const manifest = join(path, MANIFEST);
    if (this.host.kind(manifest) === 'file') {
      this.fromManifest(await this.open(manifest, join(name, MANIFEST)));
      return;
    }
    const span = { file: name, start: 0, end: 0 };
    const refusals = new Map<string, string>();
    const files = filesOf(this.host, path, '**/*.cut', false, (at, reason) =>
      refusals.set(join(name, at), reason),
    );
    this.refused(refusals, span);
    if (files.length === 0 && refusals.size === 0) {
      this.diagnostics.push(diagnose('no-cuts', span, { variant: 'folder' }));
    }
    for (const file of files) {
      const at = join(path, file);
      this.take(at, join(name, file), await this.episodeOf(dirname(at)), false);
    }
  }

  private fromManifest(episode: Episode): void {
    if (this.whole.includes(episode)) return;
    this.whole.push(episode);
    const before = this.jobs.length;
    const file = episode.file!;
    for (const pattern of episode.cuts ?? [null]) this.pattern(episode, pattern);
    const failed = [...episode.diagnostics, ...this.diagnostics].some(
      (one) => one.span.file === file && (one.severity === 'error' || one.code === 'pattern-empty'),
    );
    if (this.jobs.length > before || failed) return;
    if (episode.cuts?.length !== 0 && this.taken.size > 0) return;
    this.diagnostics.push(
      diagnose(
        'no-cuts',
        { file, start: 0, end: 0 },
        { variant: episode.cuts ? 'manifest-list' : 'manifest-folder' },
      ),
    );
  }

  private pattern(episode: Episode, written: Written | null): void {
    const folder = episode.folder!;
    const pattern = written?.text ?? '**/*.cut';
    const span = written?.span ?? { file: episode.file!, start: 0, end: 0 };
    const outside = (what: string) =>
      this.diagnostics.push(diagnose('episode-outside', span, { path: what }));
    if (leadsOut(pattern)) {
      outside(pattern);
      return;
    }
    const refusals = new Map<string, string>();
    const files = filesOf(this.host, folder, pattern, false, (at, reason) => refusals.set(at || '.', reason));
    this.refused(refusals, span);
    if (files.length === 0) {
      if (written && refusals.size === 0) this.diagnostics.push(diagnose('pattern-empty', span, { pattern }));
      return;
    }
    const root = this.host.real(folder);
    for (const file of files) {
      const path = join(folder, file);
      // What fits a pattern is a file.
      const kind = isPattern(pattern) ? 'file' : this.host.kind(path);
      if (!lies(this.host.real(path), root)) outside(file);
      else if (kind === 'file') this.take(path, join(dirname(episode.file!), file), episode, false);
      else {
        const offer = nearest(basename(path), neighbours(this.host, path));
        const guess = offer ? join(dirname(file), offer) : null;
        const parameters: Messages['file-missing'] =
          kind === 'folder' ? { variant: 'folder', folder: file } : { variant: 'missing', file, guess };
        this.diagnostics.push(diagnose('file-missing', span, parameters));
      }
    }
  }

  /** A folder that cannot be read may hold any number of cuts: that must not pass for none. */
  private refused(folders: ReadonlyMap<string, string>, span: Span): void {
    for (const [folder, reason] of folders) {
      this.diagnostics.push(diagnose('file-unreadable', span, { variant: 'folder', folder, reason }));
    }
  }

  /** A file that was named or found twice is done once, at its first place. */
  private take(path: string, name: string, episode: Episode, named: boolean): void {
    const real = this.host.real(path);
    if (this.taken.has(real)) return;
    this.taken.add(real);
    this.jobs.push({ path, name, episode, named });
  }

  /** How a path that was found by walking up is called: from the folder that the command runs in. */
  private shown(path: string): string {
    return relative(this.host.cwd, path) || path;
  }
}

/** Whether a file really lies in a folder or below it, links resolved. */
export function inside(host: Host, path: string, folder: string): boolean {
  return lies(host.real(path), host.real(folder));
}

/** Whether a path is a folder's or leads below it; both canonical. */
export function lies(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);
}
