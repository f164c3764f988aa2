/** The extension as it is installed: packed, unpacked, loaded, and run on the program. */

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import Module, { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { callOf } from '../../grammar/editors/vscode/program.js';
import { program } from '../bundle.js';
import { type Stub, vscodeStub } from './vscode-stub.js';

const SOURCE = 'grammar/editors/vscode';
const read = (path: string): string => readFileSync(path, 'utf8');
let work: string;
let vsix: string;
let files: Record<string, Uint8Array>;

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'cutwright-vscode-'));
  vsix = join(work, 'cutwright.vsix');
  execFileSync(process.execPath, [`${SOURCE}/package.mjs`, vsix]);
  files = unzipSync(readFileSync(vsix));
  for (const [path, bytes] of Object.entries(files)) {
    mkdirSync(dirname(join(work, path)), { recursive: true });
    writeFileSync(join(work, path), bytes);
  }
});

afterAll(() => rmSync(work, { recursive: true, force: true }));

const text = (path: string): string => Buffer.from(files[path]!).toString('utf8');

describe('the package', () => {
  // Content types and the root of the parts: ECMA-376 part 2, 10.1.2 (from memory).
  test('names a content type for every part that it holds', () => {
    const types = [...text('[Content_Types].xml').matchAll(/Extension="(\.\w+)"/g)].map(([, one]) => one);
    const parts = Object.keys(files).filter((one) => one !== '[Content_Types].xml');
    for (const part of parts) expect(types, part).toContain(/\.\w+$/.exec(part)?.[0]);
  });

  test('has a manifest that says what package.json says, and whose assets are there', () => {
    const manifest = text('extension.vsixmanifest');
    const about = JSON.parse(text('extension/package.json'));
    expect(manifest).toContain(
      `Id="${about.name}" Version="${about.version}" Publisher="${about.publisher}"`,
    );
    expect(manifest).toContain(`Value="${about.engines.vscode}"`);
    const assets = [...manifest.matchAll(/ Path="([^"]+)"/g)].map(([, path]) => path!);
    expect(assets).toContain('extension/package.json');
    for (const path of assets) expect(Object.keys(files)).toContain(path);
    expect(about.version).toBe(JSON.parse(read('package.json')).version);
  });

  test('holds every file that package.json points to, as it stands in the repository', () => {
    const about = JSON.parse(text('extension/package.json'));
    const { languages, grammars } = about.contributes;
    const paths = [about.main, languages[0].configuration, grammars[0].path] as string[];
    expect(paths.map((path) => join('extension', path)).filter((path) => !files[path])).toEqual([]);
    expect(text('extension/cutwright.tmLanguage.json')).toBe(
      read('grammar/editors/cutwright.tmLanguage.json'),
    );
    expect(JSON.parse(text('extension/cutwright.tmLanguage.json')).scopeName).toBe(grammars[0].scopeName);
  });

  test('is the same bytes each time', () => {
    const again = join(work, 'again.vsix');
    execFileSync(process.execPath, [`${SOURCE}/package.mjs`, again], {
      env: { ...process.env, TZ: 'Asia/Tokyo' },
    });
    expect(readFileSync(again).equals(readFileSync(vsix))).toBe(true);
  });

  const unzip = spawnSync('unzip', ['-v']).status === 0;
  test.skipIf(!unzip)('is sound in the eyes of another zip program', () => {
    expect(spawnSync('unzip', ['-tqq', vsix]).status).toBe(0);
  });

  test('carries the licences of what is bundled', () => {
    expect(text('extension/third-party.txt')).toMatch(/^vscode-languageclient \d/m);
  });
});

describe('what the editor is told of the language', () => {
  const language = JSON.parse(read(`${SOURCE}/language-configuration.json`));

  test('a double click takes a name of any script', () => {
    const word = new RegExp(language.wordPattern.pattern, `${language.wordPattern.flags}g`);
    expect('pan BOOK1@hit+6 > スカーフ@5+0 空'.match(word)).toEqual([
      'pan',
      'BOOK1',
      'hit',
      '6',
      'スカーフ',
      '5',
      '0',
      '空',
    ]);
  });

  test('a line that is not at its end goes on indented', () => {
    const [rule] = language.onEnterRules;
    const goesOn = (line: string): boolean => new RegExp(rule.beforeText).test(line);
    for (const line of ['pan A@1 > ', 'A "Nao":', 'ア：', 'expose A,', 'phrase walk =', 'A: ('])
      expect(goesOn(line)).toBe(true);
    for (const line of ['time 5+0', 'A: 1..', '   @1 2 >', '# to do:', '']) expect(goesOn(line)).toBe(false);
  });
});

describe('the extension', () => {
  let stub: Stub;
  let extension: {
    activate(context: { subscriptions: unknown[] }): Promise<void>;
    deactivate(): Promise<void>;
  };
  const settings: Record<string, unknown> = {};
  const cut = (): string => join(work, 'c012.cut');
  const document = () => ({
    languageId: 'cut',
    uri: { scheme: 'file', fsPath: cut() },
    isDirty: false,
    save: async () => true,
  });

  /** Loaded as VS Code does: the bundle asks for `vscode`, and gets it from its host. */
  function load(): void {
    stub = vscodeStub(settings);
    const modules = Module as unknown as { _load(name: string, ...more: unknown[]): unknown };
    const before = modules._load;
    modules._load = (name, ...more) => (name === 'vscode' ? stub.api : before.call(modules, name, ...more));
    try {
      const path = join(work, 'extension/extension.js');
      const require = createRequire(path);
      delete require.cache[path];
      extension = require(path);
    } finally {
      modules._load = before;
    }
  }

  /** The program, which notes how it was called. */
  function recorder(): string[] {
    const path = join(work, 'noting.cjs');
    const log = JSON.stringify(join(work, 'calls'));
    const bin = JSON.stringify(program);
    writeFileSync(
      path,
      `require('node:fs').appendFileSync(${log}, JSON.stringify(process.argv.slice(2)) + '\\n');\nrequire(${bin});\n`,
    );
    return [process.execPath, path];
  }
  const calls = (): string[][] =>
    read(join(work, 'calls'))
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));

  test('starts the server, prints a cut, shows its pages, and ends all that it started', async () => {
    writeFileSync(cut(), 'cut 12 "Rooftop"\ntime 1+0\nA "Nao": 1:12 2..\n');
    settings.command = recorder();
    load();
    await extension.activate({ subscriptions: [] });
    expect(stub.said).toEqual([]);
    expect(calls()).toEqual([['--version'], ['lsp']]);
    const about = JSON.parse(text('extension/package.json'));
    expect([...stub.commands.keys()].filter((one) => one.startsWith('cutwright.'))).toEqual(
      about.contributes.commands.map(({ command }: { command: string }) => command),
    );

    stub.active = { document: document() };
    stub.answer = 'Open it';
    await stub.commands.get('cutwright.print')!();
    expect(stub.said.at(-1)).toBe('c012.pdf is printed.');
    expect(read(join(work, 'c012.pdf')).slice(0, 5)).toBe('%PDF-');
    expect(stub.opened.splice(0)).toEqual([`file://${join(work, 'c012.pdf')}`]);

    await stub.commands.get('cutwright.show')!();
    const [address = ''] = stub.opened;
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:/);
    expect((await fetch(address)).status).toBe(200);
    await stub.commands.get('cutwright.show')!();
    expect(stub.opened).toEqual([address, address]);
    expect(calls().map(([command]) => command)).toEqual(['--version', 'lsp', 'build', 'watch']);

    // The page hears of the line that the cursor stands in.
    const events = await fetch(`${address}events`);
    const reader = events.body!.getReader();
    const selections = [{ active: { line: 2 } }];
    stub.listeners.get('selection')!(...([{ textEditor: { document: document() }, selections }] as never[]));
    let heard = '';
    while (!heard.includes('event: at')) heard += Buffer.from((await reader.read()).value ?? []).toString();
    expect(heard).toContain('"line":3');

    await extension.deactivate();
    await reader.cancel().catch(() => {});
    await expect
      .poll(
        () =>
          fetch(address).then(
            () => 'there',
            () => 'gone',
          ),
        { timeout: 20_000 },
      )
      .toBe('gone');
  });

  test('says that a cut with errors is not printed, and keeps the PDF', async () => {
    const before = readFileSync(join(work, 'c012.pdf'));
    writeFileSync(cut(), 'cut 12 "Rooftop"\ntime 1+0\nA "Nao": 1:12 2\n');
    load();
    await extension.activate({ subscriptions: [] });
    stub.active = { document: document() };
    await stub.commands.get('cutwright.print')!();
    expect(stub.said.at(-1)).toBe('c012.cut has errors and was not printed.');
    expect(stub.said.join('')).toContain('timeline-short');
    expect(readFileSync(join(work, 'c012.pdf')).equals(before)).toBe(true);
    await extension.deactivate();
  });

  test('says so where the program is not there', async () => {
    settings.command = [join(work, 'not-there')];
    load();
    stub.answer = 'Open settings';
    await extension.activate({ subscriptions: [] });
    expect(stub.said[0]).toMatch(/not-there` cannot be run: /);
    expect(stub.opened).toEqual(['workbench.action.openSettings cutwright.command']);
    stub.active = { document: document() };
    stub.answer = undefined;
    await stub.commands.get('cutwright.show')!();
    expect(stub.said.at(-1)).toContain('cannot be run');
    await extension.deactivate();
  });

  test('on Windows a shell runs the program, and blanks in a path stay together', () => {
    expect(callOf(['cutwright'], ['build', 'C:\\my cuts\\c012.cut'], 'win32')).toEqual({
      command: 'cutwright',
      args: ['build', '"C:\\my cuts\\c012.cut"'],
      shell: true,
    });
    expect(callOf([], ['lsp'], 'linux')).toEqual({ command: 'cutwright', args: ['lsp'], shell: false });
  });
});
