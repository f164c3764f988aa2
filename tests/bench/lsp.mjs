/** An editor on the built server: from a keystroke to the diagnostics of the text that it made, over standard input and output. */
import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { longCut } from './long.mjs';
import { median, milliseconds, report } from './measure.mjs';

const ROUNDS = 15;

/** Milliseconds from sending a change to its diagnostics, one a keystroke. */
export async function keystrokes(program, text, rounds = ROUNDS) {
  const child = spawn(process.execPath, program, { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  let told = () => {};
  connection.onNotification('textDocument/publishDiagnostics', ({ version, diagnostics }) =>
    told(version, diagnostics),
  );
  connection.listen();
  const uri = pathToFileURL('/tmp/cutwright-bench.cut').href;
  const arrived = (wanted) =>
    new Promise((resolve) => {
      told = (version, diagnostics) => {
        if (version === wanted) resolve(diagnostics);
      };
    });
  await connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities: {} });
  await connection.sendNotification('initialized', {});
  const first = arrived(1);
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'cut', version: 1, text },
  });
  const faults = (await first).filter(({ severity }) => severity === 1);
  if (faults.length > 0) throw new Error(`the text is wrong: ${faults[0].message}`);
  // In the middle of the text a digit is typed behind a key, and taken away again.
  const all = text.split('\n');
  const line = all.findIndex((typed, i) => i > all.length / 5 && / walk\*3$/.test(typed));
  const at = { line, character: all[line].length };
  const took = [];
  for (let version = 2; version < rounds * 2 + 2; version++) {
    const put = version % 2 === 0;
    const start = performance.now();
    const done = arrived(version);
    await connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [
        put
          ? { range: { start: at, end: at }, text: '3' }
          : { range: { start: at, end: { ...at, character: at.character + 1 } }, text: '' },
      ],
    });
    await done;
    took.push(performance.now() - start);
  }
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  return median(took);
}

export async function measureEditor() {
  const program = [fileURLToPath(new URL('../../bin/cutwright.js', import.meta.url)), 'lsp'];
  const bare = [];
  for (let i = 0; i < 9; i++) {
    const start = performance.now();
    spawnSync(process.execPath, ['-e', '0']);
    bare.push(performance.now() - start);
  }
  for (const [lines, wanted] of [
    [100, '2 ×'],
    [3000, '60 ms'],
  ]) {
    const took = await keystrokes(program, longCut(lines));
    report(
      `keystroke to diagnostics, ${lines} lines`,
      `${milliseconds(took)}, ${(took / median(bare)).toFixed(2)} × bare node`,
      wanted,
    );
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await measureEditor();
