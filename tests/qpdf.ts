import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** What is used of qpdf's WASM build; its own types leave half of it out. */
interface Qpdf {
  callMain(args: string[]): number;
  readonly FS: { writeFile(path: string, bytes: Uint8Array): void };
}

const said: string[] = [];
let opened: Promise<Qpdf> | undefined;

/**
 * What qpdf, an independent reader of PDF files, finds wrong with these bytes (`qpdf --check`: syntax, cross-reference
 * table, streams); nothing where it finds no fault.
 */
export async function faults(bytes: Uint8Array): Promise<string[]> {
  opened ??= open();
  const qpdf = await opened;
  said.length = 0;
  qpdf.FS.writeFile('/checked.pdf', bytes);
  const before = process.exitCode;
  const status = qpdf.callMain(['--check', '/checked.pdf']);
  process.exitCode = before;
  return status === 0 ? [] : [`qpdf --check gave ${status}`, ...said];
}

/** The build writes to the console that it finds when it is opened, so it is handed another one for that moment. */
async function open(): Promise<Qpdf> {
  const script = createRequire(import.meta.url).resolve('@neslinesli93/qpdf-wasm');
  const { default: create } = (await import('@neslinesli93/qpdf-wasm')) as unknown as {
    default: (options: { wasmBinary: Uint8Array }) => Promise<Qpdf>;
  };
  const { log, error } = console;
  console.log = (line: string) => said.push(line);
  console.error = (line: string) => said.push(line);
  const opening = create({ wasmBinary: readFileSync(script.replace(/qpdf\.js$/, 'qpdf.wasm')) });
  console.log = log;
  console.error = error;
  return opening;
}
