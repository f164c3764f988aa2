/** Writes WAV files of every kind that is read, for tests. */

export interface WaveOptions {
  readonly rate?: number;
  readonly channels?: number;
  readonly bits?: 8 | 16 | 24 | 32 | 64;
  readonly float?: boolean;
  /** With the longer form of the header. */
  readonly extensible?: boolean;
  readonly rf64?: boolean;
  /** A chunk before the samples, of an odd size. */
  readonly chunk?: boolean;
  /** What the header says instead of the size of the samples, in bytes. */
  readonly said?: number;
  /** What the header says instead of its format tag. */
  readonly tag?: number;
}

/** `samples`: from -1 to 1, each written to every channel. */
export function wave(samples: ArrayLike<number>, options: WaveOptions = {}): Buffer {
  const { rate = 16_000, channels = 1, bits = 16, float = false, extensible = false, rf64 = false } = options;
  const bytes = bits / 8;
  const data = Buffer.alloc(samples.length * channels * bytes);
  for (let i = 0, at = 0; i < samples.length; i++) {
    for (let channel = 0; channel < channels; channel++, at += bytes) {
      const value = samples[i]!;
      if (float && bits === 32) data.writeFloatLE(value, at);
      else if (float) data.writeDoubleLE(value, at);
      else if (bits === 8) data.writeUInt8(Math.max(0, Math.min(255, Math.round(value * 127) + 128)), at);
      else {
        const most = 2 ** (bits - 1) - 1;
        data.writeIntLE(Math.max(-most, Math.min(most, Math.round(value * most))), at, bytes);
      }
    }
  }
  const tag = options.tag ?? (float ? 3 : 1);
  const fmt = Buffer.alloc(extensible ? 40 : 16);
  fmt.writeUInt16LE(extensible ? 0xfffe : tag, 0);
  fmt.writeUInt16LE(channels, 2);
  fmt.writeUInt32LE(rate, 4);
  fmt.writeUInt32LE((rate * channels * bytes) >>> 0, 8);
  fmt.writeUInt16LE(channels * bytes, 12);
  fmt.writeUInt16LE(bits, 14);
  if (extensible) {
    fmt.writeUInt16LE(22, 16);
    fmt.writeUInt16LE(bits, 18);
    fmt.writeUInt16LE(tag, 24);
    Buffer.from('000000001000800000aa00389b71', 'hex').copy(fmt, 26);
  }
  const chunks = [
    ...(rf64 ? [chunk('ds64', ds64(data.length, samples.length))] : []),
    chunk('fmt ', fmt),
    ...(options.chunk ? [chunk('LIST', Buffer.from('odd'))] : []),
    chunk('data', data, rf64 ? 0xffffffff : options.said),
  ];
  const body = Buffer.concat(chunks);
  const head = Buffer.alloc(12);
  head.write(rf64 ? 'RF64' : 'RIFF', 0, 'latin1');
  head.writeUInt32LE(rf64 ? 0xffffffff : body.length + 4, 4);
  head.write('WAVE', 8, 'latin1');
  return Buffer.concat([head, body]);
}

function chunk(name: string, body: Buffer, said = body.length): Buffer {
  const head = Buffer.alloc(8);
  head.write(name, 0, 'latin1');
  head.writeUInt32LE(said, 4);
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)]);
}

function ds64(dataBytes: number, samples: number): Buffer {
  const body = Buffer.alloc(28);
  body.writeBigUInt64LE(BigInt(dataBytes + 72), 0);
  body.writeBigUInt64LE(BigInt(dataBytes), 8);
  body.writeBigUInt64LE(BigInt(samples), 16);
  return body;
}

/** A tone from `from` to `to` seconds, silence before it and after it. */
export function tone(seconds: number, from = 0, to = seconds, rate = 16_000, loud = 0.5): Float32Array {
  return Float32Array.from({ length: Math.round(seconds * rate) }, (_, i) => {
    const at = i / rate;
    return at >= from && at < to ? loud * Math.sin(2 * Math.PI * 220 * at) : 0;
  });
}
