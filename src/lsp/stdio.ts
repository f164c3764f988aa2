/** The server on standard input and output: the whole of what `cutwright lsp` loads. */

import {
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { Host } from '../host/host.js';
import { serve } from './language-server.js';

/** A client that sends more nonsense than this is none. */
const MOST_NONSENSE = 100;

/** Serves until the client says `exit` or closes its end; then the process ends, with 0 only after a `shutdown`. */
export function serveStdio(host: Host): Promise<never> {
  const { stdin, stdout } = process;
  const reader = new StreamMessageReader(stdin);
  const connection = createConnection(ProposedFeatures.all, reader, new StreamMessageWriter(stdout));
  const { isShut } = serve(connection, host);
  const end = (): never => process.exit(isShut() ? 0 : 1);
  let nonsense = 0;
  reader.onError(() => {
    if (++nonsense > MOST_NONSENSE) {
      host.error('cutwright lsp: what comes in is not the Language Server Protocol\n');
      process.exit(1);
    }
    // The library leaves what has come in behind the nonsense until more comes.
    setImmediate(() => stdin.emit('data', Buffer.alloc(0)));
  });
  stdin.on('end', end);
  stdin.on('close', end);
  stdout.on('error', end);
  return new Promise(() => {});
}
