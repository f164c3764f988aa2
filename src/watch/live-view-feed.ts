/** Hands what is watched to the live view. */

import { resolve } from 'node:path';
import { errorsOf } from '../build/build-summary.js';
import type { CutPrinter, PreparedCut } from '../build/cut-printer.js';
import type { Compiled } from '../episode/compile-cut.js';
import { cutNumberOf } from '../episode/episode.js';
import type { Host } from '../host/host.js';
import { lines, lineText, withoutMark } from '../language/source.js';
import type { Preview } from '../preview/preview-server.js';
import { type FrameStretch, problemsOf, type ShownCut, type ShownPage } from '../preview/shown-cut.js';
import { framesAt } from '../solve/text-to-frames.js';
import type { CompiledCut, Viewer } from './cut-watcher.js';

/** Cuts whose pages are kept in memory. */
const MOST_LAID = 24;

/** The last text of a cut that could be printed. */
interface Good {
  readonly prepared: PreparedCut;
  readonly compiled: Compiled;
}

export class LiveViewFeed implements Viewer {
  private readonly ids = new Map<string, string>();
  private readonly good = new Map<string, Good>();
  /** The newest last. */
  private readonly laid = new Map<PreparedCut, readonly ShownPage[]>();

  constructor(
    private readonly host: Host,
    private readonly preview: Pick<Preview, 'put' | 'list'>,
    private readonly printer: () => CutPrinter,
    private readonly strict: boolean,
  ) {}

  cuts(paths: readonly string[]): void {
    const all = new Set(paths);
    for (const path of this.good.keys()) if (!all.has(path)) this.good.delete(path);
    this.preview.list(paths.map((path) => this.idOf(path)));
  }

  cut({ job, compiled, prepared }: CompiledCut): void {
    if (compiled.house) return;
    const path = job.path!;
    if (prepared) this.good.set(path, { prepared, compiled });
    const good = this.good.get(path) ?? null;
    const shot = compiled.shot ?? good?.compiled.shot ?? null;
    const shown: ShownCut = {
      id: this.idOf(path),
      file: job.name,
      number: shot?.cut ?? cutNumberOf(compiled.tree) ?? '',
      title: shot?.title ?? '',
      state: prepared ? 'good' : 'broken',
      fault: prepared ? '' : errorsOf(compiled, job, this.strict),
      problems: problemsOf(compiled.diagnostics, compiled.sources),
      stamp: good?.prepared.look.stamp ?? '',
      pages: () => (good ? this.pagesOf(good.prepared) : []),
      framesAt: (file, line) => this.framesAt(file, line, compiled.shot || !good ? compiled : good.compiled),
    };
    this.preview.put(shown);
  }

  private pagesOf(prepared: PreparedCut): readonly ShownPage[] {
    const known = this.laid.get(prepared) ?? this.layOut(prepared);
    this.laid.delete(prepared);
    this.laid.set(prepared, known);
    const [oldest] = this.laid.keys();
    if (this.laid.size > MOST_LAID) this.laid.delete(oldest!);
    return known;
  }

  private layOut(prepared: PreparedCut): readonly ShownPage[] {
    const { printed, pages } = this.printer().layOut(prepared);
    const all = printed.parts.flatMap((part) => part.pages);
    return all.map((page, i) => ({ page, hash: pages[i]!.hash! }));
  }

  /** `asked`: a path as an editor gives it. Only what the cut was made of has frames; nothing is read. */
  private framesAt(asked: string, line: number, { shot, sources }: Compiled): readonly FrameStretch[] | null {
    if (asked.includes('\0')) return null;
    const real = this.host.real(resolve(this.host.cwd, asked));
    const name = [...sources.keys()].find((one) => this.host.real(resolve(this.host.cwd, one)) === real);
    if (name === undefined) return null;
    const source = lines(withoutMark(sources.get(name)!));
    if (!shot || line > source.starts.length) return [];
    const start = source.starts[line - 1]!;
    const text = lineText(source, line);
    const first = start + text.length - text.trimStart().length;
    return text.trim() === '' ? [] : framesAt(shot, name, first, start + text.trimEnd().length);
  }

  private idOf(path: string): string {
    const id = this.ids.get(path) ?? `c${this.ids.size + 1}`;
    this.ids.set(path, id);
    return id;
  }
}
