import { describe, expect, test } from 'vitest';
import { compareSides } from '../../src/command/comparison.js';
import { sideOf } from '../../src/command/comparison-sides.js';
import { ConsoleReporter } from '../../src/command/console-reporter.js';
import { memoryHost } from '../../src/host/memory-host.js';

const cut = (number: string, timeline = '1--2..') => `cut ${number}\ntime 1+0\nA: ${timeline}\n`;

async function compared(files: Readonly<Record<string, string>>, was = 'old', is = 'new') {
  const host = memoryHost(files);
  const reporter = new ConsoleReporter(host, 'human', false);
  const [old, now] = [await sideOf(host, was), await sideOf(host, is)];
  const result = await compareSides(old, now, reporter, (before, after, changes) => {
    expect(changes.length).toBeGreaterThan(0);
    return `${before.shot.cut}→${after.shot.cut}`;
  });
  return { ...result, status: reporter.finish() };
}

describe('cuts of both sides', () => {
  test('belong together by their numbers, and stand in the order of the new side', async () => {
    const {
      differing,
      compared: count,
      onlyOld,
      onlyNow,
    } = await compared({
      'old/a.cut': cut('1'),
      'old/b.cut': cut('2'),
      'old/c.cut': cut('3'),
      'new/episode.yaml': 'cuts: [z.cut, y.cut, x.cut]\n',
      'new/x.cut': cut('01', '1---2..'),
      'new/y.cut': cut('2'),
      'new/z.cut': cut('3', '1-2..'),
    });
    expect(differing).toEqual(['3→3', '1→01']);
    expect([count, onlyOld, onlyNow]).toEqual([3, [], []]);
  });

  test('without another half are told by side', async () => {
    const {
      onlyOld,
      onlyNow,
      compared: count,
    } = await compared({
      'old/a.cut': cut('1'),
      'old/b.cut': cut('2'),
      'new/b.cut': cut('2'),
      'new/c.cut': cut('4a'),
    });
    expect([onlyOld, onlyNow, count]).toEqual([['1'], ['4A'], 1]);
  });

  test('with errors are not compared, and are not alone', async () => {
    const {
      differing,
      compared: count,
      onlyOld,
      onlyNow,
      status,
    } = await compared({
      'old/a.cut': cut('1'),
      'new/a.cut': cut('1', '1'),
    });
    expect([differing, count, onlyOld, onlyNow, status]).toEqual([[], 0, [], [], 1]);
  });
});

describe('one file', () => {
  test('against another is compared whatever their numbers', async () => {
    const { differing } = await compared({ 'a.cut': cut('1'), 'b.cut': cut('2', '1-2..') }, 'a.cut', 'b.cut');
    expect(differing).toEqual(['1→2']);
  });

  test('against many means the cut of its number, and the others are nobody’s concern', async () => {
    const files = { 'a.cut': cut('2', '1-2..'), 'new/b.cut': cut('1'), 'new/c.cut': cut('2') };
    const { differing, onlyOld, onlyNow, restricted } = await compared(files, 'a.cut', 'new');
    expect([differing, onlyOld, onlyNow, restricted]).toEqual([['2→2'], [], [], null]);
  });

  test('against many without its number says so', async () => {
    const { restricted, compared: count } = await compared(
      { 'a.cut': cut('9'), 'new/b.cut': cut('1') },
      'a.cut',
      'new',
    );
    expect([restricted, count]).toEqual([{ label: 'new', key: '9' }, 0]);
  });
});
