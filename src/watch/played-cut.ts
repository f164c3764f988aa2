/** A cut as the live view's player gets it: what is seen, where its drawings lie, what is heard. */

import { shortHash } from '../build/settled-cuts.js';
import type { Episode } from '../episode/episode.js';
import { type ScanFile, scanFileOf } from '../episode/scan-files.js';
import type { Host } from '../host/host.js';
import { pictureOf } from '../picture/frame-list.js';
import { packPicture } from '../picture/frame-runs.js';
import { SCAN_HEADER_BYTES, scanFits, scanHeader } from '../picture/scan-header.js';
import type { CutPlay, PlayedDrawing } from '../preview/play-data.js';
import type { ServedFile } from '../preview/shown-cut.js';
import { heardPart, writeFilmSound } from '../shoot/film-sound.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';

export interface PlaySource {
  readonly solved: SolvedShot;
  readonly episode: Episode;
  /** Absolute path of the cut, and what messages call it. */
  readonly place: string;
  readonly file: string;
  /** Of its recording; null: nothing is heard. */
  readonly trackPath: string | null;
}

/** Scans are looked at anew each time: they come and go without any text being saved. */
export function playOf(host: Host, source: PlaySource): CutPlay {
  const { solved, trackPath } = source;
  const { settings, track, length, fps } = solved.shot;
  const picture = packPicture(pictureOf(solved));
  const flashing = solved.camera.flashes;
  return {
    picture,
    feet: settings.convention === 'west',
    caution: flashing
      ? {
          text: wordsOf(settings).sheet.flashCaution,
          language: settings.convention === 'west' ? 'en' : settings.labels,
        }
      : null,
    sound:
      trackPath !== null && track && solved.track?.sound
        ? stampOf(host, trackPath, [length, fps, track.frame, track.startSeconds])
        : null,
    drawings: drawingsOf(host, source, picture.layers),
    scanDpi: settings.scanDpi,
  };
}

function drawingsOf(
  host: Host,
  source: PlaySource,
  layers: readonly { readonly level: number; readonly number: number | null }[],
): PlayedDrawing[] {
  const asked = new Set<string>();
  return layers.flatMap(({ level, number }) => {
    const key = `${level} ${number}`;
    if (asked.has(key)) return [];
    asked.add(key);
    const file = fileOf(host, source, level, number);
    const stamp = file && stampOf(host, file.path, []);
    return file && stamp !== null ? [{ level, number, name: file.name, stamp }] : [];
  });
}

function fileOf(host: Host, source: PlaySource, level: number, number: number | null): ScanFile | null {
  return scanFileOf(host, source, source.solved, source.episode, level, number);
}

/** Null where there is no such file. */
function stampOf(host: Host, path: string, more: readonly unknown[]): string | null {
  const start = host.readPart(path, 0, 0);
  if (!start.ok) return host.kind(path) === 'none' ? null : 'unreadable';
  const all = [host.real(path), start.value.size, start.value.modified, ...more];
  return shortHash(all);
}

/** Larger files are no scans of one drawing. */
const LARGEST_BYTES = 256 * 1024 * 1024;

/** The scan of a drawing that the cut shows; null: it shows no such drawing, or there is no picture in that file. */
export function scanOf(
  host: Host,
  source: PlaySource,
  level: number,
  number: number | null,
): ServedFile | null {
  const shows = source.solved.levels[level];
  const known =
    number === null ? shows?.timed === false : shows?.drawings.some(({ cel }) => cel === number) === true;
  const file = known ? fileOf(host, source, level, number) : null;
  const start = file && host.readPart(file.path, 0, SCAN_HEADER_BYTES);
  if (!file || !start?.ok || start.value.size > LARGEST_BYTES) return null;
  const header = scanHeader(start.value.bytes);
  if (!header || !scanFits(header)) return null;
  const whole = start.value.size > SCAN_HEADER_BYTES ? host.readPart(file.path, 0, start.value.size) : start;
  return whole.ok ? { type: `image/${header.form}`, bytes: whole.value.bytes } : null;
}

/** What is heard on the rows of the sheet, as a WAV; null: nothing, or the recording cannot be read any more. */
export function soundOf(host: Host, { place, solved, episode }: PlaySource): ServedFile | null {
  const { fps, length } = solved.shot;
  const whole = { before: 0, frames: length, rowsBefore: 0 };
  const parts: Uint8Array[] = [];
  const file = {
    add(bytes: Uint8Array) {
      parts.push(bytes);
      return { ok: true, value: null } as const;
    },
  };
  const heard = heardPart(host, place, solved.shot, episode.folder, whole);
  const written = writeFilmSound(host, file, [heard], { fps, from: 0, frames: length });
  return written?.ok ? { type: 'audio/wav', bytes: Buffer.concat(parts) } : null;
}
