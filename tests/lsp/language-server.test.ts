/** When the server sends diagnostics, on a clock that the test moves; what it answers stands in the recorded sessions. */

import { PassThrough } from 'node:stream';
import { afterEach, expect, test } from 'vitest';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import {
  createProtocolConnection,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { memoryHost } from '../../src/host/memory-host.js';
import { serve } from '../../src/lsp/language-server.js';

const uri = 'file:///work/a.cut';
let client: ProtocolConnection | null = null;
afterEach(() => client?.dispose());

async function editing(locale?: string) {
  const host = memoryHost();
  const [up, down] = [new PassThrough(), new PassThrough()];
  serve(
    createConnection(ProposedFeatures.all, new StreamMessageReader(up), new StreamMessageWriter(down)),
    host,
  );
  const connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  client = connection;
  const sent: PublishDiagnosticsParams[] = [];
  connection.onNotification('textDocument/publishDiagnostics', (one) => void sent.push(one));
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: null,
    rootUri: null,
    capabilities: {},
    ...(locale === undefined ? {} : { locale }),
  });
  await connection.sendNotification('initialized', {});
  /** An answer has come to what was asked after all else: the server has heard and sent it all. */
  const settle = () => connection.sendRequest('textDocument/foldingRange', { textDocument: { uri } });
  return {
    open: async (text: string) => {
      await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'cut', version: 1, text },
      });
      await settle();
    },
    change: async (version: number, text: string) => {
      await connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ text }],
      });
      await settle();
    },
    said: () => sent.flatMap(({ diagnostics }) => diagnostics.map(({ message }) => message)),
    hover: (line: number, character: number) =>
      connection.sendRequest('textDocument/hover', { textDocument: { uri }, position: { line, character } }),
    shutdown: () => connection.sendRequest('shutdown'),
    pass: async (ms: number) => {
      host.passMs(ms);
      await settle();
      return sent.map(({ version, diagnostics }) => [version, ...diagnostics.map(({ code }) => code)]);
    },
    settle,
  };
}

test('diagnostics come 5 ms after the last keystroke, once, of the text as it stands then', async () => {
  const { open, change, pass } = await editing();
  await open('cut 1\ntime 1+0\nA: 1\n');
  expect(await pass(4)).toEqual([]);
  await change(2, 'cut 1\ntime 1+0\nA: 1..\nB: 1\n');
  expect(await pass(4)).toEqual([]);
  await change(3, 'cut 1\ntime 1+0\nA: 1..\n');
  expect(await pass(4)).toEqual([]);
  expect(await pass(1)).toEqual([[3]]);
  expect(await pass(10_000)).toEqual([[3]]);
  await change(4, 'cut 1\ntime 1+0\nA: 1\n');
  expect(await pass(5)).toEqual([[3], [4, 'timeline-short']]);
});

test('after `shutdown` none come any more', async () => {
  const { open, shutdown, pass } = await editing();
  await open('cut 1\ntime 1+0\nA: 1\n');
  await shutdown();
  expect(await pass(1000)).toEqual([]);
});

test("messages and the reference are in the language of the editor's menus", async () => {
  const text = 'cut 1\ntime 5 + 0\nA: 1..\n';
  const japanese = await editing('ja');
  await japanese.open(text);
  await japanese.pass(5);
  expect(japanese.said()[0]).toMatch(/^秒とコマの間に空白は入れません。5\+0 と書きます。/);
  expect(JSON.stringify(await japanese.hover(0, 1))).toContain('カット番号と題');
  client?.dispose();
  const german = await editing('de');
  await german.open(text);
  await german.pass(5);
  expect(german.said()[0]).toMatch(/^Seconds and frames are written/);
});
