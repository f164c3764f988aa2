/** The server on standard input and output: the whole of what `cutwright lsp` loads. */

import { createConnection, ProposedFeatures, StreamMessageWriter } from 'vscode-languageserver/node';
import type { Host } from '../host/host.js';
import { serve } from './language-server.js';
import { HeaderedMessageReader } from './message-reader.js';

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
