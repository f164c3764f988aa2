/** The server on standard input and output: the whole of what `cutwright lsp` loads. */

import {
  AbstractMessageReader,
  createConnection,
  type DataCallback,
  type Disposable,
  type Message,
  ProposedFeatures,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { Host } from '../host/host.js';
import { serve } from './language-server.js';

/** A client that sends more nonsense than this is none. */
const MOST_NONSENSE = 100;

/**
 * Serves until the client says `exit` or closes its end; then the process ends, with 0 only after a `shutdown`. A client that
 * does not speak the protocol is left: an editor starts a server anew that has ended, but not one that answers nothing.
 */
export function serveStdio(host: Host): Promise<never> {
  const { stdin, stdout } = process;
  const leave = (reason: string): never => {
    host.error(`cutwright lsp: what comes in is not the Language Server Protocol: ${reason}\n`);
    process.exit(1);
  };
  const reader = new HeaderedMessageReader(stdin, host.after, leave);
  const connection = createConnection(ProposedFeatures.all, reader, new StreamMessageWriter(stdout));
  const { isShut } = serve(connection, host);
  const end = (): never => process.exit(isShut() ? 0 : 1);
  let nonsense = 0;
  reader.onError(() => {
    if (++nonsense > MOST_NONSENSE) leave('message after message is no JSON');
  });
  stdin.on('end', end);
  stdin.on('close', end);
  stdout.on('error', end);
  return new Promise(() => {});
}

// ----
// Messages of the base protocol of the Language Server Protocol, read from bytes: a header with the length, then a body of JSON.

/** A header longer than this is none. */
const LONGEST_HEADER = 4096;
/** No editor has a message longer than this, bytes. */
const LONGEST_BODY = 256 * 1024 * 1024;
/** How long the rest of a message may take to come, ms. */
const PATIENCE = 60_000;

const BLANK_LINE = Buffer.from('\r\n\r\n');

export interface ByteStream {
  on(event: 'data', listener: (chunk: Buffer) => void): unknown;
}

/**
 * A body that is no JSON is an error, and the next message is read. Where a header is wrong, nobody knows where the next message
 * begins: `onLost` is called with the reason, once, and nothing more is read. The library's own reader looks for the next header
 * in what follows, takes the end of a body and the header behind it for one, and so loses message after message.
 */
export class HeaderedMessageReader extends AbstractMessageReader {
  private chunks: Buffer[] = [];
  private size = 0;
  /** Bytes of the body that is awaited; null: a header is. */
  private awaited: number | null = null;
  private lost = false;
  private cancelTimer = (): void => {};

  constructor(
    private readonly stream: ByteStream,
    private readonly after: Host['after'],
    private readonly onLost: (reason: string) => void,
  ) {
    super();
  }

  listen(callback: DataCallback): Disposable {
    this.stream.on('data', (chunk) => {
      if (this.lost) return;
      this.chunks.push(chunk);
      this.size += chunk.length;
      while (!this.lost && this.next(callback));
      this.cancelTimer();
      if (!this.lost && this.awaited !== null)
        this.cancelTimer = this.after(PATIENCE, () => this.lose('the rest of a message does not come'));
    });
    return { dispose: () => this.dispose() };
  }

  /** Reads a header or a body; false where more has to come. */
  private next(callback: DataCallback): boolean {
    if (this.awaited === null) return this.header();
    if (this.size < this.awaited) return false;
    const body = this.take(this.awaited);
    this.awaited = null;
    let message: Message;
    try {
      message = JSON.parse(body.toString('utf8')) as Message;
    } catch (fault) {
      this.fireError(fault);
      return true;
    }
    callback(message);
    return true;
  }

  private header(): boolean {
    const all = this.all();
    const end = all.indexOf(BLANK_LINE);
    if (end < 0 && all.length <= LONGEST_HEADER) return false;
    if (end < 0 || end > LONGEST_HEADER) {
      this.lose('a header does not end');
      return false;
    }
    const lines = all.toString('latin1', 0, end).split('\r\n');
    let length: number | null = null;
    for (const line of lines) {
      const [, name, value] = /^([!#-'*+.^-z|~\w-]+): *(.*?) *$/.exec(line) ?? [];
      if (name === undefined || value === undefined) {
        this.lose('a header is none');
        return false;
      }
      if (name.toLowerCase() === 'content-length') length = /^\d{1,9}$/.test(value) ? Number(value) : -1;
    }
    if (length === null || length < 0 || length > LONGEST_BODY) {
      this.lose(length === null ? 'a header has no length' : 'the length of a message is none');
      return false;
    }
    this.take(end + BLANK_LINE.length);
    this.awaited = length;
    return true;
  }

  private lose(reason: string): void {
    this.lost = true;
    this.chunks = [];
    this.size = 0;
    this.onLost(reason);
  }

  private all(): Buffer {
    if (this.chunks.length !== 1) this.chunks = [Buffer.concat(this.chunks)];
    return this.chunks[0]!;
  }

  private take(bytes: number): Buffer {
    const all = this.all();
    this.chunks = [all.subarray(bytes)];
    this.size -= bytes;
    return all.subarray(0, bytes);
  }
}
