/** Where painted frames go: numbered pictures, or a film that another program makes of them. */

import type { Host, TemporaryFile } from '../host/host.js';
import type { RunningProgram } from '../host/running-program.js';
import type { Canvas } from './canvas-kit.js';

/** What stands against writing, as the machine or the program says it; null: all is well. */
export type Refusal = { readonly output: string; readonly reason: string } | null;

export interface FrameWriter {
  /** Takes a frame. The canvas is its own until the next but one is added. */
  add(canvas: Canvas): Promise<Refusal>;
  /** All is written, or nothing of a film is. */
  finish(): Promise<Refusal>;
  /** Leaves everything as it was before, as far as it was not finished. */
  drop(): Promise<void>;
}

export interface PicturePath {
  /** Absolute. */
  readonly path: string;
  /** What messages call it. */
  readonly name: string;
}

/** Pictures, each whole or not there. */
export class PictureWriter implements FrameWriter {
  private count = 0;
  /** The one that is being packed while the next is painted. */
  private pending: Promise<Refusal> = Promise.resolve(null);

  /** `pathOf`: by the number of the picture, from 1. */
  constructor(
    private readonly host: Host,
    private readonly pathOf: (number: number) => PicturePath,
  ) {}

  async add(canvas: Canvas): Promise<Refusal> {
    const before = await this.pending;
    if (!before) this.pending = this.write(canvas, this.pathOf(++this.count));
    return before;
  }

  finish(): Promise<Refusal> {
    return this.pending;
  }

  async drop(): Promise<void> {
    await this.pending;
  }

  private async write(canvas: Canvas, { path, name }: PicturePath): Promise<Refusal> {
    const written = this.host.write(path, await canvas.encode('png'));
    return written.ok ? null : { output: name, reason: written.reason };
  }
}

/** Endings of films, and what the program calls their forms. */
export const FILM_FORMS: Readonly<Record<string, string>> = {
  '.mp4': 'mp4',
  '.mov': 'mov',
  '.mkv': 'matroska',
  '.webm': 'webm',
};

export interface FilmForm {
  readonly width: number;
  readonly height: number;
  readonly fps: number;
  /** A key of FILM_FORMS. */
  readonly ending: string;
  /** A file with the sound, or null: it is silent. */
  readonly sound: string | null;
}

const PROGRAM = 'ffmpeg';

/** Colours of television, said and converted to, so that every player shows the same: ITU-R BT.709. */
const COLOURS = ['-colorspace', 'bt709', '-color_primaries', 'bt709', '-color_trc', 'bt709'];

/** Raw pictures in, a film out; nothing in it tells when and where it was made. */
function programArguments({ width, height, fps, ending, sound }: FilmForm, path: string): string[] {
  // The common codecs need sides of whole pairs of pixels.
  const filters = [
    'scale=out_color_matrix=bt709:out_range=tv',
    'pad=ceil(iw/2)*2:ceil(ih/2)*2',
    'format=yuv420p',
  ];
  return [
    ...['-v', 'error', '-y', '-f', 'rawvideo', '-pixel_format', 'rgba', '-video_size', `${width}x${height}`],
    ...['-framerate', String(fps), '-i', 'pipe:0', ...(sound === null ? [] : ['-i', sound])],
    ...['-vf', filters.join(','), ...COLOURS, '-map', '0:v', ...(sound === null ? [] : ['-map', '1:a'])],
    ...['-map_metadata', '-1', '-fflags', '+bitexact', '-flags:v', '+bitexact', '-flags:a', '+bitexact'],
    ...(['.mp4', '.mov'].includes(ending) ? ['-movflags', '+faststart'] : []),
    ...['-f', FILM_FORMS[ending]!, path],
  ];
}

/** A film: written beside its final name by the program, and renamed when it is whole. */
export class FilmWriter implements FrameWriter {
  /** The frame that the program is taking while the next is painted. */
  private pending: Promise<boolean> = Promise.resolve(true);

  private constructor(
    private readonly name: string,
    private readonly file: TemporaryFile,
    private readonly program: RunningProgram,
  ) {}

  /** Null where the program is not installed. */
  static async open(
    host: Host,
    { path, name }: PicturePath,
    form: FilmForm,
  ): Promise<FilmWriter | { readonly refusal: NonNullable<Refusal> } | null> {
    const opened = host.openTemporary(path);
    if (!opened.ok) return { refusal: { output: name, reason: opened.reason } };
    const file = opened.value;
    // A device cannot be written to by a program that goes back and forth in its file.
    if (file.path === null) {
      file.drop();
      return { refusal: { output: name, reason: 'is no file' } };
    }
    const program = await host.startProgram(PROGRAM, programArguments(form, file.path));
    if (program) return new FilmWriter(name, file, program);
    file.drop();
    return null;
  }

  async add(canvas: Canvas): Promise<Refusal> {
    if (!(await this.pending)) return this.failed();
    this.pending = this.program.write(canvas.data());
    return null;
  }

  async finish(): Promise<Refusal> {
    await this.pending;
    const { status, said } = await this.program.finish();
    if (status !== 0) return this.give(reasonOf(said));
    const finished = this.file.finish();
    return finished.ok ? null : { output: this.name, reason: finished.reason };
  }

  async drop(): Promise<void> {
    await this.program.stop();
    this.file.drop();
  }

  /** It does not listen any more: what it says at its end is the reason. */
  private async failed(): Promise<Refusal> {
    const { said } = await this.program.finish();
    return this.give(reasonOf(said));
  }

  private give(reason: string): Refusal {
    this.file.drop();
    return { output: this.name, reason };
  }
}

/** The last thing that the program says, without the addresses of its parts and without the name of the temporary file. */
function reasonOf(said: string): string {
  const lines = said
    .split(/\r?\n/)
    .map((line) =>
      line
        .replace(/^\[[^\]]*\] /, '')
        .replace(/\S*\.tmp\b:?\s*/g, '')
        .trim(),
    )
    .filter((line) => line !== '' && !/^(Error (closing|muxing)|Conversion failed)/.test(line));
  const full = lines.find((line) => /no space left/i.test(line));
  if (full) return 'the disk is full';
  const last = lines.at(-1);
  return last ? `${PROGRAM} says: ${last.replace(/\.$/, '')}` : `${PROGRAM} ended before its time`;
}
