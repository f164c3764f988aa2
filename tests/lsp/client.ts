/** An editor for the tests: a real client that speaks to the server as a process of its own, over standard input and output. */

import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  type ClientCapabilities,
  createProtocolConnection,
  type Diagnostic,
  FileChangeType,
  type InitializeResult,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { DocumentText } from '../../src/lsp/document-text.js';

export interface Wishes {
  /** Ask for diagnostics instead of being sent them. */
  readonly pull?: boolean;
  readonly utf8?: boolean;
  readonly snippets?: boolean;
  /** Tell the server of changes on the disk. */
  readonly watch?: boolean;
}

export class Editor {
  readonly child: ChildProcessWithoutNullStreams;
  readonly connection: ProtocolConnection;
  /** By uri: the last ones that were sent, and how often any were. */
  readonly sent = new Map<
    string,
    { diagnostics: Diagnostic[]; version: number | undefined; count: number }
  >();
  readonly texts = new Map<string, { text: DocumentText; version: number }>();
  readonly exited: Promise<number | null>;
  errors = '';
  result!: InitializeResult;

  constructor(
    server: readonly string[],
    readonly folder: string,
    private readonly wishes: Wishes = {},
  ) {
    this.child = spawn(process.execPath, server, { cwd: folder });
    this.child.stderr.on('data', (data) => {
      this.errors += data;
    });
    // A server that is gone takes nothing more; the tests see that by its exit.
    this.child.stdin.on('error', () => {});
    this.exited = new Promise((resolve) => this.child.on('exit', resolve));
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.child.stdout),
      new StreamMessageWriter(this.child.stdin),
    );
    this.connection.onError(() => {});
    this.connection.onNotification('textDocument/publishDiagnostics', ({ uri, diagnostics, version }) => {
      this.sent.set(uri, { diagnostics, version, count: (this.sent.get(uri)?.count ?? 0) + 1 });
    });
    for (const name of [
      'client/registerCapability',
      'workspace/diagnostic/refresh',
      'workspace/inlayHint/refresh',
    ])
      this.connection.onRequest(name, () => null);
    this.connection.listen();
  }

  async begin(): Promise<void> {
    const { pull, utf8, snippets, watch = true } = this.wishes;
    const capabilities: ClientCapabilities = {
      general: { positionEncodings: utf8 ? ['utf-8'] : ['utf-16'] },
      textDocument: {
        ...(pull ? { diagnostic: {} } : {}),
        completion: { completionItem: { snippetSupport: snippets === true } },
      },
      workspace: { didChangeWatchedFiles: { dynamicRegistration: watch } },
    };
    this.result = await this.ask('initialize', {
      processId: process.pid,
      rootUri: pathToFileURL(this.folder).href,
      capabilities,
    });
    await this.tell('initialized', {});
  }

  async end(): Promise<number | null> {
    await this.ask('shutdown', null);
    await this.tell('exit', null);
    return this.exited;
  }

  // biome-ignore lint/suspicious/noExplicitAny: the answers are looked at as they come
  ask(method: string, params: unknown): Promise<any> {
    return params === null
      ? this.connection.sendRequest(method)
      : this.connection.sendRequest(method, params);
  }

  tell(method: string, params: unknown): Promise<void> {
    return params === null
      ? this.connection.sendNotification(method)
      : this.connection.sendNotification(method, params);
  }

  uri(name: string): string {
    return name.includes(':') ? name : pathToFileURL(join(this.folder, name)).href;
  }

  /** The name of a file in the editor's folder. */
  nameOf(uri: string): string {
    const folder = `${pathToFileURL(this.folder).href}/`;
    return uri.startsWith(folder) ? decodeURIComponent(uri.slice(folder.length)) : uri;
  }

  async open(name: string, text: string): Promise<void> {
    const uri = this.uri(name);
    this.texts.set(uri, { text: new DocumentText(text, this.wishes.utf8 ? 'utf-8' : 'utf-16'), version: 1 });
    await this.tell('textDocument/didOpen', { textDocument: { uri, languageId: 'cut', version: 1, text } });
  }

  text(name: string): DocumentText {
    return this.texts.get(this.uri(name))!.text;
  }

  /** Replaces a stretch, told as a change of that range. */
  async change(name: string, start: number, end: number, text: string): Promise<void> {
    const uri = this.uri(name);
    const known = this.texts.get(uri)!;
    const range = known.text.range({ start, end });
    const version = known.version + 1;
    this.texts.set(uri, { text: known.text.changed(range, text), version });
    await this.tell('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ range, text }],
    });
  }

  /** Writes a file as another program would. */
  async disk(name: string, text: string): Promise<void> {
    const path = join(this.folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    if (this.wishes.watch === false) return;
    await this.tell('workspace/didChangeWatchedFiles', {
      changes: [{ uri: this.uri(name), type: FileChangeType.Changed }],
    });
  }

  /** The diagnostics of a text as it stands. `after`: at least one more report than so many. */
  async diagnostics(name: string, after = 0): Promise<Diagnostic[]> {
    const uri = this.uri(name);
    if (this.wishes.pull) {
      const { items } = await this.ask('textDocument/diagnostic', { textDocument: { uri } });
      return items;
    }
    const wanted = this.texts.get(uri)?.version;
    for (let tries = 0; tries < 2000; tries++) {
      const sent = this.sent.get(uri);
      if (sent && sent.version === wanted && sent.count > after) return sent.diagnostics;
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    throw new Error(`no diagnostics of version ${wanted} of ${name} arrived; ${this.errors}`);
  }

  /** The next diagnostics of a text that is not open. */
  async elsewhere(name: string): Promise<Diagnostic[]> {
    for (let tries = 0; tries < 2000; tries++) {
      const sent = this.sent.get(this.uri(name));
      if (sent) {
        this.sent.delete(this.uri(name));
        return sent.diagnostics;
      }
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    throw new Error(`no diagnostics of ${name} arrived; ${this.errors}`);
  }

  count(name: string): number {
    return this.sent.get(this.uri(name))?.count ?? 0;
  }
}
