/** Hands what is watched to the live view. */

import { resolve } from 'node:path';
import { errorsOf } from '../build/build-summary.js';
import type { CutPrinter, LaidOutCut, PreparedCut } from '../build/cut-printer.js';
import { cutNumberOf } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import { runTexts } from '../language/message.js';
import { lines, lineText, placeAt, withoutMark } from '../language/source.js';
import { userLanguage } from '../language/user-language.js';
import type { EpisodePlay } from '../preview/play-data.js';
import type { Preview } from '../preview/preview-server.js';
import {
  problemsOf,
  type ShownCut,
  type ShownPage,
  type TextPlace,
  type TextRows,
} from '../preview/shown-cut.js';
import type { Shot } from '../shot/shot.js';
import { joinedFrames, stretchesIn, stretchOn } from '../solve/text-to-frames.js';
import type { CompiledCut, Viewer } from './cut-watcher.js';
import { type PlaySource, playOf, scanOf, soundOf } from './played-cut.js';
import { type EpisodeCut, episodePlayOf } from './played-episode.js';

/** Cuts whose pages, and what they are made of, are kept in memory; those of the others are made anew when they are asked for. */
const MOST_KEPT = 24;

/** The last text of a cut that could be printed. */
interface Good {
  readonly job: Job;
  readonly shot: Shot | null;
  readonly sources: ReadonlyMap<string, string>;
  readonly stamp: string;
  readonly inEpisode: Omit<EpisodeCut, 'id'>;
}

interface Kept {
  readonly prepared: PreparedCut;
  pages: readonly ShownPage[] | null;
}

export class LiveViewFeed implements Viewer {
  private readonly ids = new Map<string, string>();
  private readonly good = new Map<string, Good>();
  /** By path, the newest last. */
  private readonly kept = new Map<string, Kept>();
  private order: readonly string[] = [];
  /** Cuts of which there was nothing to show yet, with the folder of their episode. */
  private readonly unfit = new Map<string, string | null>();

  /** `printable` makes a cut out of texts that could be printed once. */
  constructor(
    private readonly host: Host,
    private readonly preview: Pick<Preview, 'put' | 'list' | 'episodes'>,
    private readonly printer: () => CutPrinter,
    private readonly strict: boolean,
    private readonly printable: (job: Job, sources: ReadonlyMap<string, string>) => PreparedCut | null,
  ) {
    preview.episodes((id) => this.episodeOf(id));
  }

  private get words(): RunTexts {
    return runTexts(userLanguage(this.host));
  }

  cuts(paths: readonly string[]): void {
    const all = new Set(paths);
    for (const path of this.good.keys()) if (!all.has(path)) this.good.delete(path);
    for (const path of this.kept.keys()) if (!all.has(path)) this.kept.delete(path);
    this.order = paths;
    this.preview.list(paths.map((path) => this.idOf(path)));
  }

  cut({ job, compiled, prepared, laidOut }: CompiledCut): void {
    if (compiled.house) return;
    const path = job.path!;
    const { shot, sources, tree, diagnostics } = compiled;
    if (prepared) {
      const { solved } = prepared.printable;
      const inEpisode = {
        handed: { shot: solved.shot, counts: solved.counts },
        flashes: solved.camera.flashes,
        heard: (solved.track?.sound ?? null) !== null,
      };
      this.good.set(path, { job, shot, sources, stamp: prepared.look.stamp, inEpisode });
      this.keep(path, { prepared, pages: laidOut ? pagesOf(laidOut) : null });
    }
    const good = this.good.get(path) ?? null;
    if (good) this.unfit.delete(path);
    else this.unfit.set(path, job.episode.folder);
    const told = shot || !good ? { shot, sources } : good;
    this.preview.put({
      id: this.idOf(path),
      file: job.name,
      number: told.shot?.cut ?? cutNumberOf(tree) ?? '',
      title: told.shot?.title ?? '',
      state: prepared ? 'good' : 'broken',
      fault: prepared ? '' : errorsOf(compiled, job, this.strict, this.words),
      problems: problemsOf(diagnostics, sources, userLanguage(this.host)),
      stamp: good?.stamp ?? '',
      ...this.answers(path, told),
    });
  }

  /** What is answered later. Apart, so that these functions hold on to nothing else of a cut. */
  private answers(
    path: string,
    told: Pick<Good, 'shot' | 'sources'>,
  ): Pick<ShownCut, 'pages' | 'rowsAt' | 'placeOf' | 'play' | 'scan' | 'sound'> {
    const asked = <T>(answer: (source: PlaySource) => T): T | null => {
      const kept = this.keptOf(path);
      return kept && answer(sourceOf(kept.prepared));
    };
    return {
      pages: () => this.pages(path),
      play: () => asked((source) => playOf(this.host, source)),
      scan: (level, number) => asked((source) => scanOf(this.host, source, level, number)),
      sound: () => asked((source) => soundOf(this.host, source)),
      rowsAt: (file, line, column) => this.rowsAt(file, line, column, told),
      placeOf: (frame, level) => placeOf(frame, level, told),
    };
  }

  private pages(path: string): readonly ShownPage[] {
    const kept = this.keptOf(path);
    if (!kept) return [];
    kept.pages ??= pagesOf(this.printer().layOut(kept.prepared));
    return kept.pages;
  }

  private keptOf(path: string): Kept | null {
    const good = this.good.get(path);
    if (!good) return null;
    const prepared = this.kept.get(path)?.prepared ?? this.printable(good.job, good.sources);
    if (!prepared) return null;
    const kept = this.kept.get(path) ?? { prepared, pages: null };
    this.keep(path, kept);
    return kept;
  }

  /** The episode of a cut, as far as its cuts can be shown, in story order. */
  private episodeOf(id: string): EpisodePlay | null {
    const path = this.order.find((one) => this.idOf(one) === id);
    const own = path === undefined ? undefined : this.good.get(path);
    if (!own) return null;
    const root = own.job.episode.folder;
    const cuts = this.order.flatMap((one) => {
      const good = this.good.get(one);
      return good?.job.episode.folder === root ? [{ id: this.idOf(one), ...good.inEpisode }] : [];
    });
    const leftOut = this.order.filter((one) => this.unfit.has(one) && this.unfit.get(one) === root).length;
    return episodePlayOf(cuts, leftOut, userLanguage(this.host));
  }

  private keep(path: string, kept: Kept): void {
    this.kept.delete(path);
    this.kept.set(path, kept);
    const [oldest] = this.kept.keys();
    if (this.kept.size > MOST_KEPT) this.kept.delete(oldest!);
  }

  /** `asked`: a path as an editor gives it. Only what the cut was made of has rows; nothing is read. */
  private rowsAt(
    asked: string,
    line: number,
    column: number | null,
    { shot, sources }: Pick<Good, 'shot' | 'sources'>,
  ): TextRows | null {
    if (asked.includes('\0')) return null;
    const real = this.host.real(resolve(this.host.cwd, asked));
    const name = [...sources.keys()].find((one) => this.host.real(resolve(this.host.cwd, one)) === real);
    if (name === undefined) return null;
    const source = lines(withoutMark(sources.get(name)!));
    if (!shot || line > source.starts.length) return { frames: [], items: [] };
    const start = source.starts[line - 1]!;
    const text = lineText(source, line);
    if (text.trim() === '') return { frames: [], items: [] };
    const at = column === null ? null : start + Math.min(column - 1, text.length);
    const here = at === null ? [] : stretchesIn(shot, name, at);
    const first = start + text.length - text.trimStart().length;
    const found = here.length > 0 ? here : stretchesIn(shot, name, first, start + text.trimEnd().length);
    const items = found.map(({ level, from, to }) => ({ level, from, to }));
    return { frames: joinedFrames(items), items };
  }

  private idOf(path: string): string {
    const id = this.ids.get(path) ?? `c${this.ids.size + 1}`;
    this.ids.set(path, id);
    return id;
  }
}

function pagesOf({ printed, pages }: LaidOutCut): readonly ShownPage[] {
  const all = printed.parts.flatMap((part) => part.pages);
  return all.map((page, i) => ({ page, hash: pages[i]!.hash! }));
}

function placeOf(
  frame: number,
  level: string | null,
  { shot, sources }: Pick<Good, 'shot' | 'sources'>,
): TextPlace | null {
  const span = shot && stretchOn(shot, frame, level)?.span;
  const text = span && sources.get(span.file);
  if (!span || typeof text !== 'string') return null;
  const source = lines(withoutMark(text));
  const place = placeAt(source, span.start);
  return { file: span.file, ...place, text: lineText(source, place.line) };
}

function sourceOf({ printable: { job, compiled, solved } }: PreparedCut): PlaySource {
  return { solved, episode: job.episode, place: job.path!, file: job.name, trackPath: compiled.trackPath };
}
