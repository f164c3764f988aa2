/** `track "sound/c012.wav"`: the recording that a cut names, found and read. */

import { basename, dirname, isAbsolute, join, resolve } from 'node:path';
import type { FilePart, Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { Shot, Track } from '../shot/shot.js';
import { readTrack, type TrackReading, type TrackSound } from '../sound/track-sound.js';
import type { ByteSource } from '../sound/wave-header.js';
import { inside, lies } from './find-cuts.js';

export interface FoundTrack {
  /** Absolute, links not resolved; null where it may not be read or is not there. Never printed. */
  readonly path: string | null;
  readonly sound: TrackSound | null;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Reads the recording of a cut that stands at `path` (absolute). It lies in the cut's folder or below, or below `root` (the
 * episode's folder, absolute, or null), and nowhere else. What is wrong with it is a warning: the sheet is printed without it.
 */
export function findTrack(host: Host, path: string, shot: Shot, root: string | null): FoundTrack | null {
  const { track, fps, length } = shot;
  if (!track) return null;
  const { file, fileSpan: span } = track;
  const fail = (diagnostic: Diagnostic): FoundTrack => ({
    path: null,
    sound: null,
    diagnostics: [diagnostic],
  });
  const target = trackInReach(host, path, file, root);
  if (target === null) return fail(diagnose('track-outside', span, { path: file, inEpisode: root !== null }));
  const start = host.readPart(target, 0, 0);
  if (!start.ok) {
    if (host.kind(target) !== 'none')
      return fail(diagnose('track-missing', span, { variant: 'unreadable', file, reason: start.reason }));
    return fail(
      diagnose('track-missing', span, { variant: 'missing', file, guess: guessOf(host, target, file) }),
    );
  }
  const window = { rows: length, fps, frame: track.frame, startSeconds: track.startSeconds };
  const key = JSON.stringify([host.real(target), start.value.size, start.value.modified, window]);
  const known = recent.get(key);
  const reading = known ?? readTrack(sourceOf(host, target, start.value), window);
  recent.delete(key);
  recent.set(key, reading);
  if (recent.size > MOST_RECENT) recent.delete(recent.keys().next().value!);
  return { path: target, ...spoken(track, reading) };
}

/** What was read of a recording is kept while the file is the same, so that an editor or a watcher does not read it again. */
const recent = new Map<string, TrackReading>();
const MOST_RECENT = 32;

export function sourceOf(host: Host, path: string, { size }: FilePart): ByteSource {
  return {
    size,
    read(at, count) {
      const part = host.readPart(path, at, count);
      return part.ok ? part.value.bytes : null;
    },
  };
}

/** A text that is another one where the waveform on the sheet is. */
export function soundDigest({ peaks, levels }: TrackSound): string {
  const bytes = (values: Float32Array): Buffer =>
    Buffer.from(values.buffer, values.byteOffset, values.byteLength);
  return Buffer.concat([bytes(peaks), bytes(levels)]).toString('base64');
}

function spoken(
  { file, fileSpan: span }: Track,
  reading: TrackReading,
): Pick<FoundTrack, 'sound' | 'diagnostics'> {
  if (!reading.ok) {
    const { ok: _, ...fault } = reading;
    return { sound: null, diagnostics: [diagnose('track-unreadable', span, { file, ...fault })] };
  }
  const { sound } = reading;
  const diagnostics: Diagnostic[] = [];
  const { promisedSeconds, seconds, notNumbers } = sound;
  if (promisedSeconds !== null)
    diagnostics.push(diagnose('track-damaged', span, { variant: 'cut-off', file, seconds, promisedSeconds }));
  if (notNumbers > 0)
    diagnostics.push(diagnose('track-damaged', span, { variant: 'not-numbers', file, count: notNumbers }));
  return { sound, diagnostics };
}

function guessOf(host: Host, target: string, file: string): string | null {
  const names = host.list(dirname(target));
  const waves = names.ok ? names.value.filter((name) => /\.(wav|wave|rf64|bwf)$/i.test(name)) : [];
  const offer = nearest(basename(target), waves);
  return offer ? join(dirname(file), offer) : null;
}

/** The absolute path of a recording that a cut names; null where it lies elsewhere than it may. */
export function trackInReach(host: Host, path: string, file: string, root: string | null): string | null {
  if (isAbsolute(file) || /^[A-Za-z]:|\\/.test(file)) return null;
  const folder = dirname(path);
  const target = resolve(folder, file);
  // The place is judged before anything is read: a message must not tell what lies elsewhere on the disk.
  const homes = root === null ? [folder] : [folder, root];
  const allowed =
    homes.some((home) => lies(target, home)) && homes.some((home) => inside(host, target, home));
  return allowed ? target : null;
}
