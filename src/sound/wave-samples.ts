/** Samples of a WAV file as numbers from -1 to 1, all channels mixed into one, a block at a time. Pure. */

import type { ByteSource, WaveHeader } from './wave-header.js';

/** Bytes that are held at once. */
const BLOCK_BYTES = 1 << 18;

/** What is no number in a recording of floating-point samples counts as 0. */
export interface SampleCount {
  readonly read: number;
  /** Samples that are no numbers. */
  readonly notNumbers: number;
}

/**
 * Hands `take` the samples from `first` on, `count` of them or up to the end, in blocks; `block` is used again for the next one.
 * A file that can no longer be read ends there.
 */
export function eachBlock(
  source: ByteSource,
  header: WaveHeader,
  first: number,
  count: number,
  take: (block: Float32Array, at: number) => void,
): SampleCount {
  const { blockBytes, dataAt, samples } = header;
  const end = Math.min(samples, first + count);
  const most = Math.max(1, Math.floor(BLOCK_BYTES / blockBytes));
  const mixed = new Float32Array(most);
  let notNumbers = 0;
  let at = Math.max(0, first);
  while (at < end) {
    const wanted = Math.min(most, end - at);
    const bytes = source.read(dataAt + at * blockBytes, wanted * blockBytes);
    const got = bytes ? Math.floor(bytes.length / blockBytes) : 0;
    if (!bytes || got === 0) break;
    const block = mixed.subarray(0, got);
    notNumbers += mix(bytes, header, block);
    take(block, at);
    at += got;
  }
  return { read: Math.max(0, at - Math.max(0, first)), notNumbers };
}

const LITTLE_ENDIAN = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;

/** Fills `block`; gives how many samples are no numbers. */
function mix(bytes: Uint8Array, { channels, format }: WaveHeader, block: Float32Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let notNumbers = 0;
  if (format === 'signed16' && LITTLE_ENDIAN && bytes.byteOffset % 2 === 0) {
    mixShorts(new Int16Array(bytes.buffer, bytes.byteOffset, block.length * channels), channels, block);
    return 0;
  }
  if (format === 'signed24') {
    const scale = 1 / (0x800000 * channels);
    for (let i = 0, at = 0; i < block.length; i++) {
      let sum = 0;
      for (let channel = 0; channel < channels; channel++, at += 3) {
        sum += ((bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16)) << 8) >> 8;
      }
      block[i] = sum * scale;
    }
    return 0;
  }
  const size = format === 'unsigned8' ? 1 : format === 'signed16' ? 2 : format === 'float64' ? 8 : 4;
  const value = valueReader(format, view);
  for (let i = 0, at = 0; i < block.length; i++) {
    let sum = 0;
    for (let channel = 0; channel < channels; channel++, at += size) {
      const one = value(at);
      if (Number.isFinite(one)) sum += one;
      else notNumbers += 1;
    }
    block[i] = sum / channels;
  }
  return notNumbers;
}

function mixShorts(samples: Int16Array, channels: number, block: Float32Array): void {
  const scale = 1 / (0x8000 * channels);
  if (channels === 1) for (let i = 0; i < block.length; i++) block[i] = samples[i]! * scale;
  else if (channels === 2)
    for (let i = 0, at = 0; i < block.length; i++, at += 2)
      block[i] = (samples[at]! + samples[at + 1]!) * scale;
  else
    for (let i = 0, at = 0; i < block.length; i++) {
      let sum = 0;
      for (let channel = 0; channel < channels; channel++) sum += samples[at++]!;
      block[i] = sum * scale;
    }
}

function valueReader(format: WaveHeader['format'], view: DataView): (at: number) => number {
  switch (format) {
    case 'unsigned8':
      return (at) => (view.getUint8(at) - 0x80) / 0x80;
    case 'signed16':
    case 'signed24':
      return (at) => view.getInt16(at, true) / 0x8000;
    case 'signed32':
      return (at) => view.getInt32(at, true) / 0x80000000;
    case 'float32':
      return (at) => view.getFloat32(at, true);
    case 'float64':
      return (at) => view.getFloat64(at, true);
  }
}
