/** The server on standard input and output: the whole of what `cutwright lsp` loads. */

import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import type { Host } from '../host/host.js';
import { serve } from './server.js';

/** Serves until the client says `exit` or closes its end; then the process ends, with 0 only after a `shutdown`. */
export function serveStdio(host: Host): Promise<never> {
  const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout);
  serve(connection, host);
  return new Promise(() => {});
}
