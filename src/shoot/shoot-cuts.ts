/** Shoots cuts: one by itself, several as an episode, to a film or to pictures. */

import { dirname } from 'node:path';
import type { Progress } from '../build/build-run.js';
import type { Reporter } from '../build/reporter.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import { eachCut, NO_SOURCES } from '../episode/batch.js';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { newEpisodeCache } from '../episode/episode.js';
import type { Found, Job } from '../episode/find-cuts.js';
import { editOf, type Handed } from '../export/episode-edit.js';
import type { Host, TemporaryFile } from '../host/host.js';
import { diagnose } from '../language/diagnostic.js';
import { editOrder, type FilmOrder, sheetOrder } from '../picture/film-order.js';
import { pictureOf } from '../picture/frame-list.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import { wordsOf } from '../words/words.js';
import { type CanvasKit, openCanvas } from './canvas-kit.js';
import { CutDrawings, ScanCache, type UnreadableDrawing } from './cut-drawings.js';
import { type FilmOutput, insteadOf } from './film-output.js';
import { type FilmCut, type FilmLook, FilmPainter } from './film-painter.js';
import { type HeardPart, heardPart, writeFilmSound } from './film-sound.js';
import { FilmWriter, type FrameWriter, PictureWriter, type Refusal } from './film-writers.js';

export interface ShootPlan {
  readonly output: FilmOutput;
  /** Pixels; null: as the episode's pictures are. */
  readonly size: { readonly width: number; readonly height: number } | null;
  readonly guides: boolean;
  readonly foot: boolean;
  /** First and last frame, once the speed is known; of a film of several cuts, counted in the film. */
  readonly from: ((fps: number) => number) | undefined;
  readonly to: ((fps: number) => number) | undefined;
  /** As it was typed, for messages. */
  readonly fromTyped: string | undefined;
}

/** A cut that can be shot. */
interface Shootable extends Handed {
  readonly job: Job;
  /** Bytes of standard input. */
  readonly bytes: Uint8Array | null;
  readonly flashes: boolean;
}

/** What is wrong with a cut never stops the others. Throws UsageError where the plan fits nothing of the film. */
export async function shootCuts(
  host: Host,
  reporter: Reporter,
  found: Found,
  plan: ShootPlan,
  progress: Progress,
): Promise<void> {
  const kit = openCanvas(host);
  if (!kit) {
    reporter.report([diagnose('canvas-missing', { file: COMMAND_LINE, start: 0, end: 0 }, {})], NO_SOURCES);
    return;
  }
  const cuts = await shootable(host, reporter, found);
  if (cuts.length === 0) return;
  const order = orderOf(cuts, reporter);
  if (!order) return;
  caution(cuts, reporter);
  await new Shooting(host, reporter, kit, cuts, order, plan, progress).run();
}

async function shootable(host: Host, reporter: Reporter, found: Found): Promise<Shootable[]> {
  const cuts: Shootable[] = [];
  let failed = 0;
  await eachCut(host, reporter, found, (compiled, job) => {
    if (compiled.house) return;
    const { solved, diagnostics } = compiled;
    if (!solved || diagnostics.some(({ severity }) => severity === 'error')) {
      failed += 1;
      return;
    }
    const bytes = job.path === null ? Buffer.from(compiled.sources.get(job.name) ?? '', 'utf8') : null;
    cuts.push({ job, bytes, shot: solved.shot, counts: solved.counts, flashes: solved.camera.flashes });
  });
  if (failed > 0) reporter.say(reporter.words.notShot(failed, reporter.tally()));
  return cuts;
}

function orderOf(cuts: readonly Shootable[], reporter: Reporter): FilmOrder | null {
  if (cuts.length === 1) return sheetOrder(cuts[0]!.shot);
  const { edit, diagnostics } = editOf(cuts);
  reporter.report(diagnostics, NO_SOURCES);
  return edit && editOrder(edit);
}

/** The words of the sheet, before anybody looks at a film that flashes. */
function caution(cuts: readonly Shootable[], reporter: Reporter): void {
  const flashing = cuts.filter(({ flashes }) => flashes);
  const [first] = flashing;
  if (!first) return;
  const { sheet } = wordsOf(first.shot.settings);
  const names = flashing.map(({ shot }) => sheet.cutNumber(shot.cut)).join(', ');
  reporter.say(`${names}: ${sheet.flashCaution}`);
}

/** Cuts that are held at once: both of a dissolve. */
const HELD = 2;

class Shooting {
  private readonly look: FilmLook;
  private readonly scans: ScanCache;
  private readonly episodes = newEpisodeCache();
  private readonly open = new Map<number, FilmCut>();
  private readonly unreadable = new Map<string, UnreadableDrawing>();
  private asked = 0;
  private missing = 0;
  private readonly first: number;
  private readonly last: number;

  constructor(
    private readonly host: Host,
    private readonly reporter: Reporter,
    private readonly kit: CanvasKit,
    private readonly cuts: readonly Shootable[],
    private readonly order: FilmOrder,
    private readonly plan: ShootPlan,
    private readonly progress: Progress,
  ) {
    const { size, guides, foot } = plan;
    this.look = { ...(size ?? cuts[0]!.shot.settings.output), guides, foot };
    this.scans = new ScanCache(host, kit);
    const { fps, frames } = order;
    this.first = Math.max(1, plan.from?.(fps) ?? 1);
    this.last = Math.min(frames, plan.to?.(fps) ?? frames);
    if (this.first > frames)
      throw new UsageError('option-value', plan.fromTyped ?? null, {
        variant: 'from-behind-end',
        from: plan.fromTyped ?? '',
        sheets: 1,
        frames,
      });
  }

  async run(): Promise<void> {
    const { output } = this.plan;
    if (output.kind === 'pictures')
      return this.shoot(new PictureWriter(this.host, output.numbered.pathOf), output.numbered.folder);
    const { file, ending } = output;
    this.host.removeStaleTemporaries(dirname(file.path));
    const sound = this.sound(file);
    if (sound && 'refusal' in sound) return this.refused(sound.refusal);
    try {
      const { width, height } = this.look;
      const form = { width, height, fps: this.order.fps, ending, sound: sound?.file.path ?? null };
      const writer = await FilmWriter.open(this.host, file, form);
      if (writer instanceof FilmWriter) return await this.shoot(writer, file.name);
      if (writer) return this.refused(writer.refusal);
      const pictures = insteadOf(file, this.host);
      const span = { file: COMMAND_LINE, start: 0, end: 0 };
      const { folder } = pictures;
      this.reporter.report([diagnose('film-program-missing', span, { film: file.name, folder })], NO_SOURCES);
      return await this.shoot(new PictureWriter(this.host, pictures.pathOf), folder);
    } finally {
      sound?.file.drop();
    }
  }

  /** The sound in a temporary file of its own; null: the film is silent. */
  private sound({
    path,
    name,
  }: {
    path: string;
    name: string;
  }):
    | { readonly file: TemporaryFile }
    | { readonly refusal: NonNullable<Refusal>; readonly file: null }
    | null {
    const { host, order, cuts, first, last } = this;
    if (cuts.every(({ shot }) => shot.track === null)) return null;
    const parts = cuts.map(
      ({ shot, job }, i): HeardPart =>
        heardPart(host, placeOf(host, job), shot, job.episode.folder, order.parts[i]!),
    );
    const opened = host.openTemporary(`${path}.wav`);
    if (!opened.ok) return { refusal: { output: name, reason: opened.reason }, file: null };
    const film = { fps: order.fps, from: first - 1, frames: last - first + 1 };
    const written = writeFilmSound(host, opened.value, parts, film);
    if (written?.ok) return { file: opened.value };
    opened.value.drop();
    return written && { refusal: { output: name, reason: written.reason }, file: null };
  }

  private async shoot(writer: FrameWriter, name: string): Promise<void> {
    const { first, last, order } = this;
    const painter = new FilmPainter(this.kit, order, this.look, (cut) => this.cut(cut));
    const frames = last - first + 1;
    this.progress.start('painting', frames);
    let refusal: Refusal = null;
    try {
      for (let frame = first; frame <= last && !refusal; frame++) {
        this.progress.step();
        refusal = await writer.add(await painter.paint(frame));
      }
      refusal ??= await writer.finish();
    } catch (fault) {
      await writer.drop();
      throw fault;
    } finally {
      this.progress.clear();
    }
    for (const place of [...this.open.keys()]) this.close(place);
    this.reportScans();
    if (refusal) return this.refused(refusal);
    const { words } = this.reporter;
    const length = secondsAndFrames(frames, order.fps);
    const pictures = writer instanceof PictureWriter;
    this.reporter.say(words.wrote(name, words.film(length, pictures, frames, this.missing, this.asked)));
  }

  private refused({ output, reason }: NonNullable<Refusal>): void {
    const span = { file: COMMAND_LINE, start: 0, end: 0 };
    const film = this.plan.output.kind === 'film';
    const fault = film
      ? diagnose('film-failed', span, { film: output, reason })
      : diagnose('output-unwritable', span, { output, reason });
    this.reporter.report([fault], NO_SOURCES);
  }

  /** A cut, compiled anew when its time comes: the frames of a whole episode would be too many to keep. */
  private cut(place: number): FilmCut {
    const known = this.open.get(place);
    if (known) return known;
    for (const old of [...this.open.keys()].slice(0, Math.max(0, this.open.size - HELD + 1))) this.close(old);
    const { job, bytes } = this.cuts[place]!;
    const { solved } = this.compiled(job, bytes);
    const cut = pictureOf(solved!);
    const source = {
      cut,
      solved: solved!,
      episode: job.episode,
      place: placeOf(this.host, job),
      file: job.name,
    };
    const pixelsAMm = this.look.width / cut.field.widthMm;
    const { settings } = solved!.shot;
    const opened: FilmCut = {
      cut,
      drawings: new CutDrawings(this.host, this.scans, source, pixelsAMm),
      name: wordsOf(settings).sheet.cutNumber(cut.cut),
      feet: settings.convention === 'west',
    };
    this.open.set(place, opened);
    return opened;
  }

  private compiled({ path, name, episode }: Job, bytes: Uint8Array | null): Compiled {
    return compile(this.host, path, episode, { name, cache: this.episodes, ...(bytes ? { bytes } : {}) });
  }

  private close(place: number): void {
    const { drawings } = this.open.get(place)!;
    this.open.delete(place);
    for (const [path, one] of drawings.unreadable) this.unreadable.set(path, one);
    this.asked += drawings.asked.size;
    this.missing += drawings.missing.size;
  }

  /** One message a level of a cut: a folder that was copied badly has many files alike. */
  private reportScans(): void {
    const byLevel = new Map<string, UnreadableDrawing[]>();
    for (const one of this.unreadable.values()) {
      const key = JSON.stringify([one.cut, one.level]);
      byLevel.set(key, [...(byLevel.get(key) ?? []), one]);
    }
    for (const [first, ...others] of byLevel.values()) {
      const { file, reason, level, cut } = first!;
      const span = { file: cut, start: 0, end: 0 };
      this.reporter.report(
        [diagnose('scan-unreadable', span, { file, reason, level, others: others.length })],
        NO_SOURCES,
      );
    }
  }
}

/** Where a cut stands; standard input stands in the current folder. */
function placeOf(host: Host, { path }: Job): string {
  return path ?? `${host.cwd}/-`;
}
