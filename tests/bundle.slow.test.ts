import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { main } from '../src/command/main.js';
import type { Host } from '../src/host/host.js';
import { nodeHost } from '../src/host/node-host.js';
import { bundle } from './bundle.js';

type Main = typeof main;
interface Loaded {
  readonly script: { readonly cachedDataRejected?: boolean };
  readonly program: { readonly main: Main; readonly nodeHost: () => Host };
}
const { load } = createRequire(import.meta.url)('../bin/load.js') as {
  load: (folder: string, command?: string) => Loaded;
};

const dist = join(bundle, 'dist');
const work = mkdtempSync(join(tmpdir(), 'cutwright-'));

afterAll(() => rmSync(work, { recursive: true, force: true }));

/** What a command writes to a file, run by the bundle or by the sources. */
async function written(run: Main, host: Host, ...argv: string[]): Promise<Buffer> {
  const output = join(work, `${Math.floor(process.uptime() * 1e6)}.out`);
  const quiet = { ...host, out: () => {}, error: () => {}, commit: () => undefined };
  expect(await run([...argv, '--output', output], quiet)).toBe(0);
  return readFileSync(output);
}

describe('the bundle', () => {
  // Japanese and Latin text, every part of a page.
  test.each([
    ['build', 'examples/saltmarsh/cuts/c001.cut'],
    ['build', 'examples/saltmarsh/cuts/c006.cut', '--labels', 'ja', '--paper', 'B4'],
    ['blank', '--convention', 'west'],
    ['export', 'examples/saltmarsh/cuts/c001.cut'],
  ])('gives the bytes that the sources give: %s %s', async (...argv) => {
    const bundled = load(dist).program;
    const own = await written(bundled.main, bundled.nodeHost(), ...argv);
    expect(own.equals(await written(main, nodeHost(), ...argv))).toBe(true);
  });

  test.each(['check', 'build'])('has a code cache for %s that this Node takes', (command) => {
    expect(load(dist, command).script.cachedDataRejected).toBe(false);
  });

  test('is ASCII, since it is read a byte a character', () => {
    for (const name of ['cutwright.cjs', 'index.cjs', 'lsp.cjs'])
      expect(
        readFileSync(join(dist, name)).findIndex((byte) => byte > 0x7f),
        name,
      ).toBe(-1);
  });

  test('has what is said in Japanese in files of their own, so that an English run does not read it', () => {
    const escaped = (text: string) =>
      text
        .replace(/[\u0080-\uffff]/g, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`)
        .toLowerCase();
    const holds = (name: string, text: string) =>
      readFileSync(join(dist, name), 'latin1').toLowerCase().includes(escaped(text));
    for (const [name, text] of [
      ['messages-ja.cjs', 'という言葉はありません'],
      ['reference-ja.cjs', 'フレームからフレームへのカメラの移動'],
      ['help-ja.cjs', 'カットの誤りを調べます'],
    ] as const) {
      expect(holds(name, text), name).toBe(true);
      expect(holds('cutwright.cjs', text), name).toBe(false);
      expect(holds('lsp.cjs', text), name).toBe(false);
    }
  });

  test('has the font and its licence beside it', () => {
    for (const name of ['NotoSansJP-Regular.ttf', 'NotoSansJP-Bold.ttf', 'latin.json', 'LICENSE.txt']) {
      expect(existsSync(join(dist, 'font', name))).toBe(true);
    }
    expect(load(dist).program.nodeHost().font('bold').ok).toBe(true);
  });
});

describe('the executable', () => {
  function run(argv: string[], { built = true, input = '' } = {}) {
    cpSync('bin', join(work, 'bin'), { recursive: true });
    rmSync(join(work, 'dist'), { recursive: true, force: true });
    if (built) cpSync(dist, join(work, 'dist'), { recursive: true });
    return spawnSync(process.execPath, [join(work, 'bin/cutwright.js'), ...argv], {
      encoding: 'utf8',
      input,
    });
  }

  test('runs the bundle, from standard input to standard output', () => {
    const { status, stdout } = run(['export', '-'], { input: 'cut 1\ntime 1+0\nA: 1..\n' });
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ cut: '1', time: 24 });
  });

  test('leaves with 1 for errors in the text, and with 2 for wrong use', () => {
    expect(run(['check', '-'], { input: 'cut 1\ntime 1+0\nA: 1:3\n' })).toMatchObject({
      status: 1,
      stdout: '',
    });
    expect(run(['chekc', '-'])).toMatchObject({ status: 2, stdout: '' });
  });

  test('says what to do where nothing is built yet', () => {
    expect(run(['check', '-'], { built: false })).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('npm run build'),
    });
  });
});
