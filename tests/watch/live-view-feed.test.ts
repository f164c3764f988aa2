import { describe, expect, test } from 'vitest';
import { CutPrinter } from '../../src/build/cut-printer.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { hasErrors } from '../../src/language/diagnostic.js';
import type { EpisodePlay } from '../../src/preview/play-data.js';
import type { ShownCut } from '../../src/preview/shown-cut.js';
import { LiveViewFeed } from '../../src/watch/live-view-feed.js';
import { WatchedCuts } from '../../src/watch/watched-cuts.js';

const CUT = 'cut 7 "Quay"\ntime 1+0\nA: 1:12 2:6\n   3..\n';

async function fed(files: Readonly<Record<string, string>> = { 'a.cut': CUT }) {
  const host = memoryHost(files);
  const { jobs } = await findCuts(host, ['.']);
  const printer = CutPrinter.open(host);
  const shown = new Map<string, ShownCut>();
  const lists: (readonly string[])[] = [];
  let episodeOf: (id: string) => EpisodePlay | null = () => null;
  const preview = {
    put: (cut: ShownCut) => void shown.set(cut.file, cut),
    list: (ids: readonly string[]) => void lists.push(ids),
    episodes: (of: (id: string) => EpisodePlay | null) => {
      episodeOf = of;
    },
  };
  const cuts = new WatchedCuts(host, false);
  let madeAgain = 0;
  const feed = new LiveViewFeed(
    host,
    preview,
    () => printer,
    false,
    (job, sources) => {
      madeAgain += 1;
      const { compiled, cache } = cuts.compileAgain(job, sources);
      return compiled.solved && printer.prepare({ host, job, compiled, solved: compiled.solved, cache });
    },
  );
  const look = (name: string, text?: string) => {
    if (text !== undefined) host.files.set(`/work/${name}`, Buffer.from(text));
    const job = jobs.find((one) => one.name === name)!;
    const { compiled, cache } = cuts.compile(job);
    const { solved } = compiled;
    const fit = solved && !hasErrors(compiled.diagnostics);
    feed.cut({
      job,
      compiled,
      laidOut: null,
      prepared: fit ? printer.prepare({ host, job, compiled, solved, cache }) : null,
    });
    return shown.get(name);
  };
  return { feed, look, lists, madeAgain: () => madeAgain, episode: (id: string) => episodeOf(id) };
}

describe('a cut', () => {
  test('is shown with its number, its title and its pages', async () => {
    const { look } = await fed();
    const one = look('a.cut')!;
    expect(one).toMatchObject({ number: '7', title: 'Quay', state: 'good', fault: '', problems: [] });
    expect(one.pages().map(({ page }) => page.label)).toEqual(['1']);
    expect(one.pages()).toBe(one.pages());
  });

  test('that is broken keeps its last good pages, and says what is wrong', async () => {
    const { look } = await fed();
    const good = look('a.cut')!;
    const pages = good.pages();
    const broken = look('a.cut', CUT.replace('..', ''))!;
    expect(broken).toMatchObject({ id: good.id, state: 'broken', fault: '1 error', stamp: good.stamp });
    expect(broken.problems.map(({ code }) => code)).toEqual(['timeline-short']);
    expect(broken.pages()).toBe(pages);
  });

  test('that was broken from the beginning has no pages', async () => {
    const { look } = await fed({ 'a.cut': CUT.replace('..', '') });
    const one = look('a.cut')!;
    expect([one.pages(), one.stamp]).toEqual([[], '']);
  });

  test('that is a shared file is not shown', async () => {
    const { look } = await fed({ 'h.cut': 'phrase walk = 1-2\n' });
    expect(look('h.cut')).toBeUndefined();
  });
});

describe('the rows of a line', () => {
  test('are those of what stands on it, item by item and joined', async () => {
    const { look } = await fed();
    const one = look('a.cut')!;
    expect(one.rowsAt('a.cut', 3, null)).toEqual({
      frames: [{ from: 1, to: 18 }],
      items: [
        { level: 'A', from: 1, to: 12 },
        { level: 'A', from: 13, to: 18 },
      ],
    });
    expect(one.rowsAt('/work/a.cut', 4, null)?.frames).toEqual([{ from: 19, to: 24 }]);
  });

  test('are those of the item alone at which the cursor stands', async () => {
    const { look } = await fed();
    const one = look('a.cut')!;
    // A: 1:12 2:6
    const rows = (column: number) => one.rowsAt('a.cut', 3, column)?.frames;
    expect([4, 8, 9, 12, 99].map(rows)).toEqual([
      [{ from: 1, to: 12 }],
      [{ from: 1, to: 12 }],
      [{ from: 13, to: 18 }],
      [{ from: 13, to: 18 }],
      [{ from: 13, to: 18 }],
    ]);
  });

  test('are those of the whole line where the cursor stands at its name', async () => {
    const { look } = await fed();
    expect(look('a.cut')!.rowsAt('a.cut', 3, 1)?.frames).toEqual([{ from: 1, to: 18 }]);
  });

  test('are none for a line that is not there, and for an empty one', async () => {
    const { look } = await fed();
    const one = look('a.cut')!;
    const none = { frames: [], items: [] };
    expect([one.rowsAt('a.cut', 5, null), one.rowsAt('a.cut', 99, 1)]).toEqual([none, none]);
  });

  test('of a file that the cut was not made of are nobody’s', async () => {
    const { look } = await fed({ 'a.cut': CUT, 'b.cut': CUT.replace('7', '8') });
    const one = look('a.cut')!;
    expect([one.rowsAt('b.cut', 3, null), one.rowsAt('a.cut\0', 3, null)]).toEqual([null, null]);
  });
});

test('a row leads to the place in the text that says what it shows', async () => {
  const { look } = await fed();
  const one = look('a.cut')!;
  expect(one.placeOf(15, 'A')).toEqual({ file: 'a.cut', line: 3, column: 9, text: 'A: 1:12 2:6' });
  expect(one.placeOf(20, null)).toEqual({ file: 'a.cut', line: 4, column: 4, text: '   3..' });
  expect([one.placeOf(15, 'B'), one.placeOf(25, 'A')]).toEqual([null, null]);
});

test('a cut has one name in addresses, letters and digits, for as long as it is watched', async () => {
  const { feed, look, lists } = await fed({ 'a.cut': CUT, 'b.cut': CUT.replace('7', '8') });
  feed.cuts(['/work/b.cut', '/work/a.cut']);
  expect(lists.at(-1)).toEqual(['c1', 'c2']);
  expect([look('a.cut')!.id, look('b.cut')!.id]).toEqual(['c2', 'c1']);
});

test('a cut that is watched no more loses its good pages', async () => {
  const { feed, look } = await fed();
  look('a.cut');
  feed.cuts([]);
  expect(look('a.cut', CUT.replace('..', ''))!.pages()).toEqual([]);
});

test('of many cuts the pages are made anew when they are asked for, out of the last texts that were good', async () => {
  const many = Array.from({ length: 30 }, (_, i) => [`${i + 1}.cut`, CUT.replace('cut 7', `cut ${i + 1}`)]);
  const { look, madeAgain } = await fed(Object.fromEntries(many));
  const shown = many.map(([name]) => look(name!)!);
  expect(madeAgain()).toBe(0);
  look('1.cut', 'cut 1\ntime 1+0\nA 1\n');
  const [page] = shown[0]!.pages();
  expect(page!.page.marks.some((mark) => mark.kind === 'text' && mark.text === 'Quay')).toBe(true);
  expect(madeAgain()).toBe(1);
  shown[0]!.pages();
  shown[29]!.pages();
  expect(madeAgain()).toBe(1);
  expect(shown[2]!.rowsAt('3.cut', 3, null)?.frames).toEqual([{ from: 1, to: 18 }]);
  expect(madeAgain()).toBe(1);
});

describe('the player gets', () => {
  test('what is seen of a cut, and of one that is broken what was seen last', async () => {
    const { look } = await fed();
    const rows = (one: ShownCut) => one.play()?.picture.runs.reduce((sum, [, count]) => sum + count, 0);
    expect(rows(look('a.cut')!)).toBe(24);
    expect(rows(look('a.cut', CUT.replace('..', ''))!)).toBe(24);
    expect(rows(look('a.cut', CUT.replace('1+0', '2+0'))!)).toBe(48);
  });

  test('nothing of a cut that was broken from the beginning', async () => {
    const { look } = await fed({ 'a.cut': CUT.replace('..', '') });
    const one = look('a.cut')!;
    expect([one.play(), one.scan(0, 1), one.sound()]).toEqual([null, null, null]);
  });

  test('the episode of a cut in story order, without the cuts that cannot be shown', async () => {
    const { feed, look, episode } = await fed({
      'a.cut': CUT,
      'b.cut': CUT.replace('7', '8'),
      'c.cut': CUT.replace('7', '9').replace('..', ''),
    });
    feed.cuts(['/work/b.cut', '/work/c.cut', '/work/a.cut']);
    for (const name of ['a.cut', 'b.cut', 'c.cut']) look(name);
    expect(episode('c1')?.cuts.map(({ id, record }) => [id, record])).toEqual([
      ['c1', 0],
      ['c3', 24],
    ]);
    expect(episode('c3')?.word).toBe('1 cut left out: there are errors in the text.');
    expect([episode('c2'), episode('c9')]).toEqual([null, null]);
  });
});
