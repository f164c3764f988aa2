import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
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

/** What the compiler says of a text that uses the package. */
function compiled(text: string): string {
  writeFileSync(join(home, 'consumer.mts'), text);
  const options = [
    '--ignoreConfig',
    '--noEmit',
    '--strict',
    '--module',
    'node20',
    '--target',
    'es2022',
    '--types',
    'node',
  ];
  const done = spawnSync(process.execPath, [tsc, ...options, 'consumer.mts'], {
    cwd: home,
    encoding: 'utf8',
  });
  return done.stdout;
}

describe('the package', () => {
  test('runs the example of its doc comment, with types', () => {
    expect(compiled(example())).toBe('');
    writeFileSync(join(home, 'example.mjs'), example());
    const { stdout, stderr } = spawnSync(process.execPath, ['example.mjs'], { cwd: home, encoding: 'utf8' });
    expect(stderr).toBe('');
    const [solved, page] = stdout.trim().split('\n');
    expect(solved).toMatch(/^[1-9]\d* 72 [1-9]\d*$/);
    expect(page).toMatch(/^210 297 [1-9]\d{3,} [1-9]\d{3,}$/);
  });

  test('has types that refuse a wrong use', () => {
    const text = "import { compileCut } from 'cutwright';\n";
    expect(compiled(`${text}compileCut('cut 1', { settings: { paper: 'A7' } });\n`)).toContain('TS2322');
    expect(compiled(`${text}compileCut('cut 1').pdf();\n`)).toContain("Property 'pdf' does not exist");
    expect(
      compiled(`${text}const { solved } = compileCut('cut 1');\nsolved?.counts.drawings.toFixed();\n`),
    ).toBe('');
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
