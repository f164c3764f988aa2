/**
 * What a WAV file says of itself. Sources: Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0
 * (August 1991), RIFF and WAVE; Microsoft, mmreg.h, WAVE_FORMAT_EXTENSIBLE; EBU Tech 3306 (2009), RF64 and ds64. Pure.
 */

import type { SoundFormatName, WaveTrouble } from '../language/catalogue/message-terms.js';

/** Bytes that are read a part at a time, never as a whole. */
export interface ByteSource {
  readonly size: number;
  /** `count` bytes from `at` on, fewer at the end of the file; null where it cannot be read any more. */
  read(at: number, count: number): Uint8Array | null;
}

export type SampleFormat = 'unsigned8' | 'signed16' | 'signed24' | 'signed32' | 'float32' | 'float64';

export interface WaveHeader {
  readonly sampleRate: number;
  readonly channels: number;
  readonly format: SampleFormat;
  /** Bytes of one sample of all channels. */
  readonly blockBytes: number;
  /** Where the samples begin, in bytes. */
  readonly dataAt: number;
  /** Samples of each channel that are really there. */
  readonly samples: number;
  /** The samples that the header promises, where the file ends before them; else null. */
  readonly promised: number | null;
}

export type WaveReading =
  | { readonly ok: true; readonly header: WaveHeader }
  | ({ readonly ok: false } & WaveTrouble);

const PCM = 0x0001;
const FLOAT = 0x0003;
const EXTENSIBLE = 0xfffe;
/** A size that is not known, or stands in the ds64 chunk. */
const UNKNOWN_SIZE = 0xffffffff;
/** No file has more chunks; a damaged one may seem to. */
const MOST_CHUNKS = 10_000;
/** No recording has more channels. */
const MOST_CHANNELS = 256;

export function readWaveHeader(source: ByteSource): WaveReading {
  if (source.size === 0) return { ok: false, fault: 'empty' };
  const head = source.read(0, 12);
  if (!head) return { ok: false, fault: 'cut-off' };
  const name = letters(head, 0);
  const kind = letters(head, 8);
  if (!((name === 'RIFF' || name === 'RF64' || name === 'BW64') && kind === 'WAVE')) {
    const format = formatOf(head);
    if (format) return { ok: false, fault: 'other-format', format };
    return { ok: false, fault: name === 'RIFF' && head.length < 12 ? 'cut-off' : 'unknown-format' };
  }
  let fmt: DataView | null = null;
  let largeData: number | null = null;
  let at = 12;
  for (let count = 0; at + 8 <= source.size && count < MOST_CHUNKS; count++) {
    const bytes = source.read(at, 8);
    if (!bytes || bytes.length < 8) break;
    const id = letters(bytes, 0);
    const size = viewOf(bytes).getUint32(4, true);
    if (id === 'data')
      return fmt ? withData(source, fmt, at + 8, size, largeData) : { ok: false, fault: 'damaged' };
    if (id === 'fmt ' || id === 'ds64') {
      const body = source.read(at + 8, Math.min(size, 64));
      if (!body || body.length < Math.min(size, 16)) break;
      if (body.length < 16) return { ok: false, fault: 'damaged' };
      if (id === 'fmt ') fmt = viewOf(body);
      else largeData = Number(viewOf(body).getBigUint64(8, true));
    }
    // A chunk of an odd size is padded.
    at += 8 + size + (size % 2);
  }
  return { ok: false, fault: 'cut-off' };
}

function withData(
  source: ByteSource,
  fmt: DataView,
  dataAt: number,
  size: number,
  largeData: number | null,
): WaveReading {
  let tag = fmt.getUint16(0, true);
  const channels = fmt.getUint16(2, true);
  const sampleRate = fmt.getUint32(4, true);
  const blockBytes = fmt.getUint16(12, true);
  const bits = fmt.getUint16(14, true);
  // The first two bytes of the sub-format's GUID are the tag that it stands for.
  if (tag === EXTENSIBLE && fmt.byteLength >= 26) tag = fmt.getUint16(24, true);
  if (channels === 0) return { ok: false, fault: 'no-channels' };
  if (sampleRate === 0) return { ok: false, fault: 'no-rate' };
  const bytes = Math.ceil(bits / 8);
  const format = sampleFormat(tag, bytes);
  if (!format) return { ok: false, fault: 'coded', tag, bits };
  if (blockBytes !== channels * bytes || channels > MOST_CHANNELS) return { ok: false, fault: 'damaged' };
  const there = Math.max(0, source.size - dataAt);
  // A recorder that was switched off never wrote the size.
  const said = size === UNKNOWN_SIZE ? largeData : size === 0 ? null : size;
  const samples = Math.floor(Math.min(said ?? there, there) / blockBytes);
  if (samples === 0) return { ok: false, fault: said === null ? 'no-samples' : 'cut-off' };
  const promised = said !== null && said > there ? Math.floor(said / blockBytes) : null;
  return { ok: true, header: { sampleRate, channels, format, blockBytes, dataAt, samples, promised } };
}

function sampleFormat(tag: number, bytes: number): SampleFormat | null {
  if (tag === PCM) return ([null, 'unsigned8', 'signed16', 'signed24', 'signed32'] as const)[bytes] ?? null;
  if (tag === FLOAT) return bytes === 4 ? 'float32' : bytes === 8 ? 'float64' : null;
  return null;
}

/** By the first twelve bytes, as each format's own description gives them. */
function formatOf(head: Uint8Array): SoundFormatName | null {
  const first = letters(head, 0);
  const third = letters(head, 8);
  if (first === 'fLaC') return 'flac';
  if (first === 'OggS') return 'ogg';
  if (first === 'FORM' && (third === 'AIFF' || third === 'AIFC')) return 'aiff';
  if (letters(head, 4) === 'ftyp') return 'm4a';
  if (first === 'caff') return 'caf';
  if (first === '.snd') return 'au';
  if (first === 'riff') return 'wave64';
  if (first === 'RIFX') return 'big-endian-wave';
  if (first === 'RIFF' && third === 'AVI ') return 'avi';
  if (first === 'MThd') return 'midi';
  const [a = 0, b = 0] = head;
  if (first.startsWith('ID3') || (a === 0xff && (b & 0xe6) === 0xe2)) return 'mp3';
  return null;
}

function letters(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
