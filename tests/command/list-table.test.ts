import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { demoWorld } from './demo.js';
import { type Ran, run, runOn } from './run.js';

describe('the table', () => {
  const table = async (files: Record<string, string>, ...argv: string[]): Promise<Ran> =>
    runOn({ 'episode.yaml': 'title: T\n', ...files }, 'list', ...argv);

  test('has a line a cut, and the totals', async () => {
    const { status, out } = await run(demoWorld(), 'list');
    expect(status).toBe(0);
    const lines = out.split('\n');
    expect(lines[0]).toMatch(/^cut +title +scene +time +feet/);
    expect(lines.filter((line) => /^\d+ /.test(line))).toHaveLength(27 + 3);
    expect(out).toMatch(
      /^27 cuts, running time \d+\+\d+ \(\d+'\d\d\); budget 120\+0: \d+\+\d+ (under|over)$/m,
    );
    expect(out).toMatch(/^汐見ろく +1 +4\+12 /m);
  });

  test('stands in line where characters are two columns wide', async () => {
    const { out } = await table({
      'c1.cut': 'cut 1 "渡し場の鐘、朝"\ntime 1+0\nA: 1..\n',
      'c2.cut': 'cut 2 "The ferry bell"\ntime 1+0\nA: 1..\n',
    });
    // Every character of the first title is two columns wide (Unicode TR 11): 7 characters, 14 columns.
    const [first, second] = out.split('\n').slice(2, 4) as [string, string];
    expect(first.indexOf('1+0') + 7).toBe(second.indexOf('1+0'));
  });

  test('is no wider than the terminal: titles are shortened, figures are not', async () => {
    const host = memoryHost({
      'episode.yaml': '',
      'c1.cut': `cut 1 "${'a long way of saying it, '.repeat(6)}"\ntime 1+0\nA: 1--2..\n`,
    });
    const wide = (await run(host, 'list')).out.split('\n')[2]!;
    const narrow = (await run(Object.assign(host, { columns: 110 }), 'list')).out.split('\n');
    expect(wide.length).toBeGreaterThan(150);
    for (const line of narrow.slice(0, 5)) expect(line.length).toBeLessThanOrEqual(110);
    expect(narrow[2]).toContain('…');
    expect(narrow[2]!.replace(/^.*…/, '')).toBe(wide.slice(-narrow[2]!.replace(/^.*…/, '').length));
  });

  test('lets no control characters of a title through', async () => {
    const { out } = await table({ 'c1.cut': 'cut 1 "a\\nb"\ntime 1+0\nA: 1..\n' });
    expect(out).toMatch(/^1 ! +a b /m);
  });
});
