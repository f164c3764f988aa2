/** The body of a PDF file (ISO 32000-1, 7.5): numbered objects, handed on as they are written, and the table of where they are. */

/** Where the bytes of a file go as they come; nothing is kept of them here. */
export type Sink = (bytes: Uint8Array) => void;

/** The version, and bytes that say that the file is not text. */
const HEADER = '%PDF-1.7\n%\xff\xff\xff\xff\n';

export class PdfObjects {
  /** Where each object begins, by its number; 0 for those that are not written yet. */
  private readonly offsets = [0];
  private at = 0;
  /** What was written and not handed on. */
  private text = HEADER;

  constructor(private readonly sink: Sink) {}

  /** The number of an object that will be written. */
  next(): number {
    return this.offsets.push(0) - 1;
  }

  /** Writes an object; `body` in ASCII. */
  add(id: number, body: string): void {
    this.begin(id);
    this.text += `${body}\nendobj\n`;
  }

  /** Writes a stream that is compressed already. `entries`: of its dictionary, beside its length and filter. */
  stream(id: number, entries: string, bytes: Uint8Array): void {
    this.begin(id);
    const own = entries === '' ? '' : `${entries}\n`;
    this.text += `<<\n${own}/Length ${bytes.length}\n/Filter /FlateDecode\n>>\nstream\n`;
    this.flush();
    this.sink(bytes);
    this.at += bytes.length;
    this.text = '\nendstream\nendobj\n';
  }

  /** Writes the end of the file: the table of its objects and where readers begin. `identifier`: of 16 bytes. */
  end(root: number, info: number, identifier: Uint8Array): void {
    const table = this.at + this.text.length;
    const count = this.offsets.length;
    const entries = this.offsets.map((offset, id) =>
      id === 0 ? '0000000000 65535 f \n' : `${String(offset).padStart(10, '0')} 00000 n \n`,
    );
    const id = `<${Buffer.from(identifier).toString('hex')}>`;
    this.text += `xref\n0 ${count}\n${entries.join('')}trailer\n<<\n/Size ${count}\n/Root ${root} 0 R
/Info ${info} 0 R\n/ID [${id} ${id}]\n>>\nstartxref\n${table}\n%%EOF\n`;
    this.flush();
  }

  private begin(id: number): void {
    this.offsets[id] = this.at + this.text.length;
    this.text += `${id} 0 obj\n`;
  }

  private flush(): void {
    this.sink(Buffer.from(this.text, 'latin1'));
    this.at += this.text.length;
    this.text = '';
  }
}

/** A text string (7.9.2): ASCII as it stands, everything else as UTF-16. */
export function pdfText(text: string): string {
  if (/^[ -~]*$/.test(text)) return `(${text.replace(/[\\()]/g, '\\$&')})`;
  return `<feff${utf16Hex(text)}>`;
}

/** Four hexadecimal digits. */
export const hex = (code: number): string => code.toString(16).padStart(4, '0');

/** UTF-16, most significant byte first. */
export function utf16Hex(text: string): string {
  let digits = '';
  for (let i = 0; i < text.length; i++) digits += hex(text.charCodeAt(i));
  return digits;
}
