/**
 * Private words of the program in a PDF file: an entry of its information dictionary (ISO 32000-1, 14.3.3, allows keys of one's
 * own). They are found from the file's end, without reading its pages.
 */

export const PRIVATE_KEY = 'CutwrightPrint';

/** Gives the last `most` bytes of a file and its size; null where it cannot be read. */
export type ReadFileEnd = (most: number) => { readonly bytes: Uint8Array; readonly size: number } | null;

/** What is read first: more than most cuts have behind their pages. */
const FIRST = 1 << 12;
/** No end of a file that this program wrote is longer. */
const MOST = 1 << 26;

/**
 * The private words of a file that this program wrote, or null: it is none, is not whole (cut short, or changed by another
 * program), or has none.
 */
export function privateWords(endOf: ReadFileEnd): string | null {
  for (let most = FIRST; most <= MOST; most *= 8) {
    const end = endOf(most);
    if (end === null) return null;
    const found = new End(end.bytes, end.size).words();
    if (found !== 'further up') return found;
    if (end.bytes.length === end.size) return null;
  }
  return null;
}

/** How a file of this program's ends (7.5.5): the number of objects, the catalog, the information, the identifier, the table. */
const CLOSING =
  /\ntrailer\n<<\n\/Size (\d{1,9})\n\/Root (\d{1,9}) 0 R\n\/Info (\d{1,9}) 0 R\n\/ID \[<([0-9a-f]{32})> <\4>\]\n>>\nstartxref\n(\d{1,15})\n%%EOF\n$/;
const CLOSING_BYTES = 400;

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
    const closing = CLOSING.exec(this.text.slice(-CLOSING_BYTES));
    if (!closing) return null;
    const [, size, root, info, , startXref] = closing;
    const table = this.match(Number(startXref), /xref\n0 (\d{1,9})\n/y);
    if (table === null || table === 'further up') return table;
    const first = Number(startXref) + table[0].length;
    // The table must end where the trailer begins, which stands after a line end.
    const trailer = this.start + this.text.length - closing[0].length + 1;
    if (table[1] !== size || first + 20 * Number(size) !== trailer) return null;
    const object = (id: string, pattern: RegExp): Found<string> => {
      const entry = this.match(first + 20 * Number(id), /(\d{10}) 00000 n \n/y);
      if (entry === null || entry === 'further up') return entry;
      const found = this.match(Number(entry[1]), new RegExp(`${id} 0 obj\n${pattern.source}`, 'ys'));
      return found === null || found === 'further up' ? found : found[1]!;
    };
    const catalog = object(root!, /<<\n\/Type \/(Catalog)\n/);
    if (catalog === null || catalog === 'further up') return catalog;
    const id = object(info!, new RegExp(`<<\n[^>]*?/${PRIVATE_KEY} (\\d{1,9}) 0 R\n`));
    if (id === null || id === 'further up') return id;
    // A string that holds none of the characters that PDF escapes (7.3.4.2).
    return object(id, /\(([^()\\]*)\)\nendobj\n/);
  }

  /** What stands at an offset of the file. */
  private match(offset: number, sticky: RegExp): Found<RegExpExecArray> {
    if (offset < this.start) return 'further up';
    sticky.lastIndex = offset - this.start;
    return sticky.exec(this.text);
  }
}
