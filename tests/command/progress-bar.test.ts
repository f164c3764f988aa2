import { describe, expect, test } from 'vitest';
import { ProgressBar } from '../../src/command/progress-bar.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { loadMessages } from '../../src/language/message.js';
import { displayWidth } from '../../src/language/source.js';
import { CUT, run } from './run.js';

/** What a terminal shows at last of what was written to it: `\r` goes back to the start of the line, and writes over. */
function screen(text: string): string[] {
  return text.split('\n').map((line) => {
    let shown = '';
    for (const part of line.split('\r')) shown = part + shown.slice(part.length);
    return shown.trimEnd();
  });
}

function watched(columns: number | null, quiet = false, variables: Record<string, string> = {}) {
  const host = { ...memoryHost(), columns, env: (name: string) => variables[name] };
  let text = '';
  host.error = (more: string) => {
    text += more;
  };
  return { progress: new ProgressBar(host, quiet), text: () => text };
}

describe('on a terminal', () => {
  test('a bar grows, and is gone at the end', () => {
    const { progress, text } = watched(60);
    progress.start('printing', 4);
    const seen: string[] = [];
    for (let i = 0; i < 4; i++) {
      progress.step();
      seen.push(screen(text()).at(-1)!);
    }
    expect(seen[0]).toBe(`printing 0 of 4 [${'.'.repeat(40)}]`);
    expect(seen[3]).toBe(`printing 3 of 4 [${'#'.repeat(30)}${'.'.repeat(10)}]`);
    progress.clear();
    expect(screen(text())).toEqual(['']);
  });

  test('what is said stands above it, whole', () => {
    const { progress, text } = watched(60);
    progress.start('printing', 9);
    progress.step();
    progress.host.error('c1.cut:3:4: error\n    A: 1\n');
    expect(screen(text()).slice(0, 2)).toEqual(['c1.cut:3:4: error', '    A: 1']);
    expect(screen(text()).at(-1)).toMatch(/^printing 0 of 9 \[/);
    progress.clear();
    expect(screen(text())).toEqual(['c1.cut:3:4: error', '    A: 1', '']);
  });

  test.each([10, 20, 30, 40])('never wider than %i columns', (columns) => {
    const { progress, text } = watched(columns);
    progress.start('comparing', 3000);
    for (let i = 0; i < 3000; i++) progress.step();
    for (const part of text().split(/[\r\n]/)) expect(part.length).toBeLessThan(columns);
  });

  test.each([10, 20, 30])(
    'never wider than %i columns in Japanese, of which a character takes two',
    async (columns) => {
      await loadMessages('ja');
      const { progress, text } = watched(columns, false, { CUTWRIGHT_LANGUAGE: 'ja' });
      progress.start('comparing', 3000);
      for (let i = 0; i < 30; i++) progress.step();
      expect(text()).toContain('比較中');
      for (const part of text().split(/[\r\n]/)) expect(displayWidth(part)).toBeLessThan(columns);
    },
  );

  test('none for a single cut', () => {
    const { progress, text } = watched(80);
    progress.start('printing', 1);
    progress.step();
    progress.clear();
    expect(text()).toBe('');
  });
});

describe('elsewhere', () => {
  test('a line for every hundred cuts', () => {
    const { progress, text } = watched(null);
    progress.start('printing', 250);
    for (let i = 0; i < 250; i++) progress.step();
    progress.clear();
    expect(text()).toBe('printing: 100 of 250 cuts\nprinting: 200 of 250 cuts\n');
  });

  test('nothing for a program', () => {
    for (const columns of [80, null]) {
      const { progress, text } = watched(columns, true);
      progress.start('printing', 250);
      for (let i = 0; i < 250; i++) progress.step();
      expect(text()).toBe('');
    }
  });
});

describe('build', () => {
  const FILES = {
    'e/episode.yaml': '',
    'e/1.cut': CUT,
    'e/2.cut': 'cut 2\ntime 1+0\nA: 1\n',
    'e/3.cut': CUT.replace('1', '3'),
  };

  test('on a terminal leaves what it leaves elsewhere', async () => {
    const plain = await run(memoryHost(FILES), 'build', 'e');
    const terminal = memoryHost(FILES);
    const { error, status } = await run(Object.assign(terminal, { columns: 80 }), 'build', 'e');
    expect(error).toContain('\r');
    expect(screen(error)).toEqual(plain.error.split('\n').map((line) => line.trimEnd()));
    expect(status).toBe(plain.status);
  });

  test('shows no bar to a program that reads JSON', async () => {
    const host = Object.assign(memoryHost(FILES), { columns: 80 });
    const { error } = await run(host, 'build', 'e', '--format', 'json');
    expect(JSON.parse(error)).toMatchObject({ version: 1 });
  });
});
