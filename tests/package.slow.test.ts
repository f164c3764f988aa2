import { execFileSync, spawn, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from './bundle.js';

/** Somebody else's folder, with the package in its `node_modules`. */
let home: string;
let installed: string;
const tsc = resolve('node_modules/typescript/bin/tsc');

beforeAll(() => {
  home = mkdtempSync(resolve('node_modules/.cutwright-consumer-'));
  installed = join(home, 'node_modules/cutwright');
  mkdirSync(installed, { recursive: true });
  cpSync('package.json', join(installed, 'package.json'));
  symlinkSync(join(bundle, 'dist'), join(installed, 'dist'));
  execFileSync(process.execPath, [
    tsc,
    '-p',
    'scripts/tsconfig.declarations.json',
    '--outDir',
    join(installed, 'types'),
  ]);
  writeFileSync(join(home, 'package.json'), '{ "type": "module" }');
}, 300_000);
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** The example of the library's doc comment. */
function example(): string {
  const [, comment = ''] = /^\/\*\*\n([\s\S]*?)\n \*\//.exec(readFileSync('src/index.ts', 'utf8')) ?? [];
  const lines = comment.split('\n').flatMap((line) => /^ \* {5}(.*)$/.exec(line)?.[1] ?? []);
  expect(lines.length).toBeGreaterThan(5);
  return `${lines.join('\n')}\n`;
}

/** Texts that use the package, by name; the compiler looks at all of them at once, since it takes most of its time for what they import. */
const CONSUMERS = {
  example: example(),
  paper: "import { compileCut } from 'cutwright';\ncompileCut('cut 1', { settings: { paper: 'A7' } });\n",
  call: "import { compileCut } from 'cutwright';\ncompileCut('cut 1').pdf();\n",
  counts:
    "import { compileCut } from 'cutwright';\nconst { solved } = compileCut('cut 1');\nsolved?.counts.drawings.toFixed();\n",
} as const;

/** What the compiler says of each. */
function compiled(): ReadonlyMap<keyof typeof CONSUMERS, string> {
  const names = Object.keys(CONSUMERS) as (keyof typeof CONSUMERS)[];
  for (const name of names) writeFileSync(join(home, `${name}.mts`), CONSUMERS[name]);
  const program = ts.createProgram(
    names.map((name) => join(home, `${name}.mts`)),
    {
      noEmit: true,
      strict: true,
      module: ts.ModuleKind.Node20,
      target: ts.ScriptTarget.ES2022,
      types: ['node'],
    },
  );
  const said = (file: ts.SourceFile | undefined) =>
    ts
      .getPreEmitDiagnostics(program, file)
      .map(({ code, messageText }) => `TS${code} ${ts.flattenDiagnosticMessageText(messageText, '\n')}`)
      .join('\n');
  return new Map(names.map((name) => [name, said(program.getSourceFile(join(home, `${name}.mts`)))]));
}

describe('the package', () => {
  test('has types that let the example of its doc comment pass, and refuse a wrong use', () => {
    const said = compiled();
    expect(said.get('example')).toBe('');
    expect(said.get('counts')).toBe('');
    expect(said.get('paper')).toContain('TS2322');
    expect(said.get('call')).toContain("Property 'pdf' does not exist");
  });

  test('runs the example of its doc comment', () => {
    writeFileSync(join(home, 'example.mjs'), example());
    const { stdout, stderr } = spawnSync(process.execPath, ['example.mjs'], { cwd: home, encoding: 'utf8' });
    expect(stderr).toBe('');
    const [solved, page] = stdout.trim().split('\n');
    expect(solved).toMatch(/^[1-9]\d* 72 [1-9]\d*$/);
    expect(page).toMatch(/^210 297 [1-9]\d{3,} [1-9]\d{3,}$/);
  });

  test('holds the library and its types, and no source', () => {
    rmSync(join(installed, 'dist'));
    cpSync(join(bundle, 'dist'), join(installed, 'dist'), { recursive: true });
    const listed = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
      cwd: installed,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    const [{ files }] = JSON.parse(listed) as [{ files: { path: string }[] }];
    const paths = files.map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining(['dist/index.cjs', 'types/src/index.d.ts', 'dist/font/NotoSansJP-Regular.ttf']),
    );
    expect(paths.filter((path) => path.endsWith('.ts') && !path.endsWith('.d.ts'))).toEqual([]);
  });
});

describe('a tarball of the package, installed in an empty folder without a network', () => {
  let folder: string;
  const bin = () => join(folder, 'node_modules/cutwright/bin/cutwright.js');
  const run = (args: readonly string[], more: readonly string[] = []) =>
    spawnSync(process.execPath, [...more, bin(), ...args], { cwd: folder, encoding: 'utf8' });

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'cutwright-installed-'));
    const whole = join(folder, 'whole');
    // The tree of the package, with what this run has built.
    for (const part of [
      'bin',
      'examples',
      'grammar',
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'package.json',
    ])
      cpSync(part, join(whole, part), { recursive: true });
    cpSync(join(bundle, 'dist'), join(whole, 'dist'), { recursive: true });
    const npm = (args: readonly string[], cwd: string) =>
      execFileSync('npm', [...args, '--ignore-scripts'], {
        cwd,
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'pipe'],
      });
    const name = npm(['pack', '--silent'], whole).trim();
    writeFileSync(join(folder, 'package.json'), '{}');
    npm(['install', '--offline', '--no-audit', '--no-fund', join(whole, name)], folder);
    rmSync(whole, { recursive: true });
  }, 300_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('brings no other package but the optional one that paints', () => {
    const packages = readdirSync(join(folder, 'node_modules')).filter((one) => !one.startsWith('.'));
    // Without a network it is there if npm has it from before.
    expect(packages.filter((one) => one !== '@napi-rs')).toEqual(['cutwright']);
    const { dependencies = {}, optionalDependencies } = JSON.parse(
      readFileSync(join(folder, 'node_modules/cutwright/package.json'), 'utf8'),
    );
    expect(dependencies).toEqual({});
    expect(Object.keys(optionalDependencies)).toEqual(['@napi-rs/canvas']);
  });

  test('checks, prints and serves an editor', async () => {
    const cut = 'node_modules/cutwright/examples/saltmarsh/cuts/c001.cut';
    expect(run(['check', cut]).stderr).toContain('1 cut checked');
    expect(run(['build', cut, '--output', 'c001.pdf']).status).toBe(0);
    expect(readFileSync(join(folder, 'c001.pdf'), 'latin1').slice(0, 5)).toBe('%PDF-');
    const params = { processId: null, rootUri: null, capabilities: {} };
    const message = JSON.stringify({ jsonrpc: '2.0', id: 1, method: 'initialize', params });
    // It leaves when its input ends, so that is held open until it has answered.
    const server = spawn(process.execPath, [bin(), 'lsp'], { cwd: folder });
    let complaints = '';
    server.stderr.on('data', (data) => {
      complaints += data;
    });
    server.stdin.write(`Content-Length: ${message.length}\r\n\r\n${message}`);
    let answer = '';
    for await (const data of server.stdout) {
      answer += data;
      if (answer.includes('"capabilities"')) server.stdin.end();
    }
    expect(complaints).toBe('');
    expect(answer).toContain('"capabilities"');
  });

  test('has the licence of each package in its bundles', () => {
    const legal = readFileSync(join(folder, 'node_modules/cutwright/dist/LEGAL.txt'), 'utf8');
    const parts = legal.split(`\n${'-'.repeat(80)}\n\n`);
    const names = parts.map((part) => part.split(' ')[0]);
    expect(names).toEqual(expect.arrayContaining(['chokidar', 'commander', 'yaml']));
    for (const part of parts)
      expect(part).toMatch(/Permission (to use|is hereby granted)|Apache License|Redistribution/);
  });

  test('has every file that its documents point at', () => {
    const root = join(folder, 'node_modules/cutwright');
    const documents = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((one) =>
      one.endsWith('.md'),
    );
    expect(documents).toContain('README.md');
    const missing = documents.flatMap((document) =>
      [...readFileSync(join(root, document), 'utf8').matchAll(/\]\((?!\w+:)([^)#\s]+)/g)]
        .map(([, target]) => join(dirname(document), target!))
        .filter((target) => !existsSync(join(root, target))),
    );
    expect(missing).toEqual([]);
  });

  test('says on an older Node which one is needed', () => {
    const older = join(folder, 'older.cjs');
    writeFileSync(older, "Object.defineProperty(process.versions, 'node', { value: '18.20.4' });\n");
    const { engines } = JSON.parse(readFileSync('package.json', 'utf8')) as { engines: { node: string } };
    const { status, stdout, stderr } = run(['check', 'x.cut'], ['--require', older]);
    expect([status, stdout, stderr]).toEqual([
      2,
      '',
      `cutwright needs Node ${engines.node.replace('>=', '')} or newer; this is Node 18.20.4\n`,
    ]);
  });
});
