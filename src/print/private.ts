/**
 * Private words of the program in a PDF file: an entry of its information dictionary (ISO 32000-1, 14.3.3, allows keys of one's
 * own). They are found from the file's end, without reading its pages.
 */

export const PRIVATE_KEY = 'CutwrightPrint';

/** Gives the last `most` bytes of a file and its size; null where it cannot be read. */
export type EndOf = (most: number) => { readonly bytes: Uint8Array; readonly size: number } | null;

/** What is read first: more than most cuts have behind their pages. */
const FIRST = 1 << 16;
/** No end of a file that this program wrote is longer. */
const MOST = 1 << 26;

/**
 * The private words of a file that this program wrote, or null: it is none, is not whole (cut short, or changed by another
 * program), or has none.
 */
export function privateWords(endOf: EndOf): string | null {
  for (let most = FIRST; most <= MOST; most *= 8) {
    const end = endOf(most);
    if (end === null) return null;
    const found = new End(end.bytes, end.size).words();
    if (found !== 'further up') return found;
    if (end.bytes.length === end.size) return null;
  }
  return null;
}

type Found<T> = T | null | 'further up';

/** The last part of a file, in which things are found by their offsets in the file. */
class End {
  private readonly text: string;
  private readonly start: number;

  constructor(bytes: Uint8Array, size: number) {
    this.text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1');
    this.start = size - bytes.length;
  }

  words(): Found<string> {
    const closing = /\ntrailer\n<<\n(.*?)\n>>\nstartxref\n(\d{1,15})\n%%EOF\n$/s.exec(this.text.slice(-2000));
    if (!closing) return null;
    const table = this.match(Number(closing[2]), /xref\n0 (\d{1,9})\n/y);
    if (table === null || table === 'further up') return table;
    const info = /\/Info (\d{1,9}) 0 R/.exec(closing[1]!);
    if (!info) return null;
    const first = Number(closing[2]) + table[0].length;
    const object = <T>(id: string, pattern: RegExp, take: (found: RegExpExecArray) => T): Found<T> => {
      const entry = this.match(first + 20 * Number(id), /(\d{10}) 00000 n \n/y);
      if (entry === null || entry === 'further up') return entry;
      const found = this.match(Number(entry[1]), new RegExp(`${id} 0 obj\n${pattern.source}`, 'ys'));
      return found === null || found === 'further up' ? found : take(found);
    };
    const id = object(
      info[1]!,
      new RegExp(`<<\n[^>]*?/${PRIVATE_KEY} (\\d{1,9}) 0 R\n`),
      (found) => found[1]!,
    );
    if (id === null || id === 'further up') return id;
    // A string that holds none of the characters that PDF escapes (7.3.4.2).
    return object(id, /\(([^()\\]*)\)\nendobj\n/, (found) => found[1]!);
  }

  /** What stands at an offset of the file. */
  private match(offset: number, sticky: RegExp): Found<RegExpExecArray> {
    if (offset < this.start) return 'further up';
    sticky.lastIndex = offset - this.start;
    return sticky.exec(this.text);
  }
}
