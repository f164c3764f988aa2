/** What no good client does: the server answers in the words of the protocol, goes on, or ends. It never hangs. */

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';
import { Editor } from './client.js';

const CUT = 'cut 12\ntime 5+0\nA: 1\n';
let work: string;
let editor: Editor;

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'cutwright-rough-'));
});

afterAll(() => rmSync(work, { recursive: true, force: true }));
afterEach(() => {
  editor?.child.kill();
});

async function started(wishes = {}): Promise<Editor> {
  editor = new Editor([program, 'lsp'], work, wishes);
  await editor.begin();
  return editor;
}

const codes = async (name: string): Promise<unknown[]> =>
  (await editor.diagnostics(name)).map(({ code }) => code);

/** A message as it goes over the wire. */
const framed = (body: string): string => `Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`;

describe('a client that sends nonsense', () => {
  test.each([
    ['a body that is no JSON', framed('{"jsonrpc": oops')],
    ['a body that is no message', framed('[1, 2, 3]')],
    ['an answer that nobody waits for', framed('{"jsonrpc":"2.0","id":999,"result":null}')],
    [
      'a number in place of parameters',
      framed('{"jsonrpc":"2.0","method":"textDocument/didOpen","params":7}'),
    ],
    ['several of them at once', `${framed('}')}${framed('"')}`],
  ])('is served on after %s', async (_, sent) => {
    await started();
    editor.child.stdin.write(sent);
    await editor.open('a.cut', CUT);
    expect(await codes('a.cut')).toEqual(['timeline-short']);
    expect(await editor.end()).toBe(0);
  });

  test.each([
    ['a header without a length', 'Content-Type: text\r\n\r\n', 'a header has no length'],
    ['a header that is none', 'hello there\r\n\r\n', 'a header is none'],
    [
      'a length that is too small',
      `Content-Length: 2\r\n\r\n{"jsonrpc":"2.0"}${framed('{}')}`,
      'a header is none',
    ],
    ['message after message that is no JSON', framed('{').repeat(300), 'message after message is no JSON'],
  ])('is left after %s, as nobody knows what it says', async (_, sent, reason) => {
    await started();
    editor.child.stdin.write(sent);
    expect(await editor.exited).toBe(1);
    expect(editor.errors).toBe(
      `cutwright lsp: what comes in is not the Language Server Protocol: ${reason}\n`,
    );
  });

  test('gets an error for a request that is not known, and for one without its parameters', async () => {
    await started();
    await expect(editor.ask('cutwright/fly', {})).rejects.toMatchObject({ code: -32601 });
    await expect(editor.ask('textDocument/hover', {})).rejects.toThrow();
    await editor.open('a.cut', CUT);
    expect(await codes('a.cut')).toEqual(['timeline-short']);
  });

  test('gets an error for a question before `initialize`', async () => {
    editor = new Editor([program, 'lsp'], work);
    const at = { textDocument: { uri: editor.uri('a.cut') }, position: { line: 0, character: 0 } };
    await expect(editor.ask('textDocument/hover', at)).rejects.toMatchObject({ code: -32002 });
    await editor.begin();
    await editor.open('a.cut', CUT);
    expect(await codes('a.cut')).toEqual(['timeline-short']);
  });

  test('may ask about texts that are not open, close them twice, and change them', async () => {
    await started();
    const textDocument = { uri: editor.uri('never.cut') };
    const position = { line: 3, character: 3 };
    expect(await editor.ask('textDocument/hover', { textDocument, position })).toBeNull();
    expect(await editor.ask('textDocument/completion', { textDocument, position })).toBeNull();
    await editor.tell('textDocument/didClose', { textDocument });
    await editor.tell('textDocument/didClose', { textDocument });
    await editor.tell('textDocument/didChange', {
      textDocument: { ...textDocument, version: 2 },
      contentChanges: [{ text: CUT }],
    });
    await editor.open('a.cut', CUT);
    expect(await codes('a.cut')).toEqual(['timeline-short']);
  });

  test.each([
    [{ line: 99, character: 0 }],
    [{ line: 0, character: 1e9 }],
    [{ line: -1, character: -5 }],
    [{ line: 1.5, character: 0.5 }],
    [{ line: 2 ** 31, character: 2 ** 31 }],
  ])('may point outside the text: %j', async (position) => {
    await started();
    await editor.open('a.cut', CUT);
    const at = { textDocument: { uri: editor.uri('a.cut') }, position };
    const range = { start: position, end: position };
    for (const method of ['hover', 'completion', 'definition', 'documentHighlight'])
      await editor.ask(`textDocument/${method}`, at);
    await editor.ask('textDocument/codeAction', { ...at, range, context: { diagnostics: [] } });
    await editor.ask('textDocument/inlayHint', { ...at, range });
    await editor.tell('textDocument/didChange', {
      textDocument: { ...at.textDocument, version: 2 },
      contentChanges: [{ range, text: '' }],
    });
    expect(await editor.ask('textDocument/documentSymbol', at)).toHaveLength(3);
  });

  test('may have texts that are no files', async () => {
    await started();
    for (const name of [
      'untitled:Untitled-1',
      'http://127.0.0.1/a.cut',
      'file://elsewhere/a.cut',
      'nonsense:%%%',
    ]) {
      await editor.open(name, CUT);
      expect(await codes(name)).toEqual(['timeline-short']);
      const at = { textDocument: { uri: name }, position: { line: 2, character: 0 } };
      await editor.ask('textDocument/hover', at);
      await editor.ask('textDocument/definition', at);
      await editor.ask('textDocument/references', { ...at, context: { includeDeclaration: true } });
    }
  });
});

describe('a client that goes', () => {
  const ends = [
    ['closes its end', (one: Editor) => one.child.stdin.end()],
    ['closes its end in the middle of a header', (one: Editor) => one.child.stdin.end('Content-Le')],
    [
      'closes its end in the middle of a message',
      (one: Editor) => one.child.stdin.end('Content-Length: 99\r\n\r\n{"js'),
    ],
    ['stops listening', (one: Editor) => one.child.stdout.destroy()],
  ] as const;

  test.each(ends)('and %s leaves no server behind', async (what, leave) => {
    await started();
    await editor.open('a.cut', CUT);
    await editor.diagnostics('a.cut');
    leave(editor);
    if (what === 'stops listening')
      await editor.tell('textDocument/didClose', { textDocument: { uri: editor.uri('a.cut') } });
    expect(await editor.exited).toBe(1);
  });

  test('without a word, killed, leaves no server behind', async () => {
    // A process between: it starts the server, tells its number, and is killed.
    const between = spawn(process.execPath, [
      '-e',
      `const c = require('node:child_process').spawn(process.execPath, [${JSON.stringify(program)}, 'lsp'], { stdio: ['pipe', 'ignore', 'ignore'] });
       console.log(c.pid); setInterval(() => {}, 1000);`,
    ]);
    const pid = await new Promise<number>((resolve) =>
      between.stdout.once('data', (data) => resolve(Number(data))),
    );
    expect(isAlive(pid)).toBe(true);
    between.kill('SIGKILL');
    for (let tries = 0; tries < 500 && isAlive(pid); tries++)
      await new Promise((resolve) => setTimeout(resolve, 20));
    expect(isAlive(pid)).toBe(false);
  });
});

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

describe('a text', () => {
  test('of 8 MB is told about, and does not stop the server', async () => {
    await started();
    await editor.open('big.cut', `${CUT}${'# nothing but a comment, again and again\n'.repeat(205_000)}`);
    expect(await codes('big.cut')).toEqual(['file-too-large']);
    await editor.open('a.cut', CUT);
    expect(await codes('a.cut')).toEqual(['timeline-short']);
  });

  test('of 2 MB that is no cut at all is told about as well', async () => {
    await started();
    const noise = `${'?'.repeat(40)}\n`.repeat(45_000);
    await editor.open('noise.cut', noise);
    expect((await codes('noise.cut')).at(-1)).toBe('reading-stopped');
  });

  test('with CR LF, a byte-order mark and characters beyond the first plane has its places right', async () => {
    for (const utf8 of [false, true]) {
      await started({ utf8 });
      expect(editor.result.capabilities.positionEncoding).toBe(utf8 ? 'utf-8' : 'utf-16');
      const text = '\ufeffcut 12 "𠮷野 🎞"\r\ntime 5+0\r\nA "𠮷": 1 zzz 2..\r\n';
      await editor.open('wide.cut', text);
      // What the font lacks is told as well, and does not matter here.
      const first = (await editor.diagnostics('wide.cut')).find(({ code }) => code === 'unknown-phrase');
      // A, blank, quote, 𠮷 (two units, four bytes), quote, colon, blank, 1, blank.
      const at = utf8 ? 12 : 10;
      expect(first!.range).toEqual({
        start: { line: 2, character: at },
        end: { line: 2, character: at + 3 },
      });
      const start = text.indexOf('zzz') - 1;
      await editor.change('wide.cut', start, start + 4, '');
      expect(await codes('wide.cut')).not.toContain('unknown-phrase');
      await editor.change('wide.cut', 4, 6, '7');
      const symbols = await editor.ask('textDocument/documentSymbol', {
        textDocument: { uri: editor.uri('wide.cut') },
      });
      expect(symbols[0].name).toBe('cut 7 "𠮷野 🎞"');
      editor.child.kill();
    }
  });

  test('with CR LF keeps its line ends where it is laid out', async () => {
    await started();
    await editor.open('a.cut', 'cut   12\r\ntime 1+0\r\nA:   1..\r\n');
    const edits = await editor.ask('textDocument/formatting', {
      textDocument: { uri: editor.uri('a.cut') },
      options: { tabSize: 2, insertSpaces: true },
    });
    let text = editor.text('a.cut');
    for (const { range, newText } of edits.reverse()) text = text.changed(range, newText);
    expect(text.raw).toBe('cut 12\r\ntime 1+0\r\n\r\nA: 1..\r\n'.replace('\r\n\r\nA', '\r\nA'));
  });

  test('that is a folder on the disk, or lies behind one that is a file, is read from the editor', async () => {
    writeFileSync(join(work, 'file'), '');
    await started();
    await editor.open('file/a.cut', CUT);
    expect(await codes('file/a.cut')).toEqual(['timeline-short']);
  });
});
