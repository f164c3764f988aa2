/**
 * Bytes of a content stream as they are written. A page holds some thousand numbers, and this is where printing spends
 * its time: digits go straight into one buffer that all pages of a document share.
 */
export class Writer {
  private bytes = new Uint8Array(1 << 16);
  private length = 0;

  /** ASCII as it stands. */
  ascii(text: string): void {
    const end = this.reserve(text.length);
    for (let i = 0; i < text.length; i++) this.bytes[end + i] = text.charCodeAt(i);
  }

  /** Bytes as they stand. */
  copy(bytes: Uint8Array): void {
    const start = this.reserve(bytes.length);
    this.bytes.set(bytes, start);
  }

  /** A number to a thousandth (of a millimetre), without zeros at its end, and a blank. */
  number(value: number): void {
    this.decimal(Math.round(value * 1000), 3, value);
  }

  /** The same of a whole number of thousandths. */
  thousandths(count: number): void {
    this.decimal(count, 3, count / 1000);
  }

  /** A number of a matrix, to a hundred-thousandth: it is multiplied by the length of a text. */
  factor(value: number): void {
    this.decimal(Math.round(value * 100_000), 5, value);
  }

  /** What was written; the writer starts afresh. */
  take(): Uint8Array {
    const taken = this.bytes.slice(0, this.length);
    this.length = 0;
    return taken;
  }

  private decimal(scaled: number, decimals: number, value: number): void {
    if (!(scaled > -1e9 && scaled < 1e9)) throw new RangeError(`a mark has the measure ${value}`);
    let at = this.reserve(16);
    const bytes = this.bytes;
    let left = scaled | 0;
    if (left < 0) {
      bytes[at++] = MINUS;
      left = -left;
    }
    let digits = decimals;
    while (digits > 0 && left % 10 === 0) {
      left = (left / 10) | 0;
      digits--;
    }
    let size = digits + 1;
    while (size < 10 && left >= POWERS[size]!) size++;
    if (digits > 0) size++;
    const end = at + size;
    const point = digits > 0 ? end - 1 - digits : -1;
    for (let i = end - 1; i >= at; i--) {
      if (i === point) {
        bytes[i] = POINT;
      } else {
        bytes[i] = ZERO + (left % 10);
        left = (left / 10) | 0;
      }
    }
    bytes[end] = BLANK;
    this.length = end + 1;
  }

  /** Makes room and counts it as written; where it starts. */
  private reserve(size: number): number {
    const start = this.length;
    if (start + size > this.bytes.length) {
      const larger = new Uint8Array(Math.max(this.bytes.length * 2, start + size));
      larger.set(this.bytes);
      this.bytes = larger;
    }
    this.length = start + size;
    return start;
  }
}

const POWERS = Array.from({ length: 10 }, (_, i) => 10 ** i);
const MINUS = 45;
const POINT = 46;
const ZERO = 48;
const BLANK = 32;
