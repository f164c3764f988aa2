import { beforeAll, describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { type Looked, lookInto } from './pdf.js';
import { CUT, fileNames, isPdf, run, runOn } from './run.js';

const TWO = CUT.replace('cut 1', 'cut 2');
const BROKEN = 'cut 3\ntime 1+0\nA: 1\n';

describe('where it goes', () => {
  test('beside the cut, with a line that says so', async () => {
    const host = memoryHost({ 'cuts/c012.cut': CUT });
    expect(await run(host, 'build', 'cuts/c012.cut')).toEqual({
      status: 0,
      out: '',
      error: 'wrote cuts/c012.pdf: 2 pages\n',
    });
    expect(isPdf(host.files.get('/work/cuts/c012.pdf'))).toBe(true);
    expect(fileNames(host)).toEqual(['cuts/c012.cut', 'cuts/c012.pdf']);
  });

  test.each([
    ['x.pdf', ['x.pdf']],
    ['out/x.pdf', ['out/x.pdf']],
    ['out', ['out/a.pdf']],
    ['out/', ['out/a.pdf']],
    ['there', ['there/a.pdf']],
    ['there.d', ['there.d/a.pdf']],
  ])('--output %s', async (output, names) => {
    const host = memoryHost({ 'a.cut': CUT, 'there/b.txt': '', 'there.d/b.txt': '' });
    expect((await run(host, 'build', 'a.cut', '-o', output)).status).toBe(0);
    expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual(names);
  });

  test('standard output', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    const { status, error } = await run(host, 'build', 'a.cut', '--output', '-');
    expect([status, error]).toEqual([0, 'wrote 2 pages to standard output\n']);
    expect(isPdf(host.printedBytes())).toBe(true);
    expect(fileNames(host)).toEqual(['a.cut']);
  });

  test('from standard input to standard output, or to a file', async () => {
    const host = memoryHost();
    host.input = Buffer.from(CUT);
    expect((await run(host, 'build', '-')).status).toBe(0);
    expect(isPdf(host.printedBytes())).toBe(true);
    expect((await run(host, 'build', '-', '-o', 'x.pdf')).status).toBe(0);
    expect(isPdf(host.files.get('/work/x.pdf'))).toBe(true);
    expect((await run(host, 'build', '-', '-o', 'folder/')).error).toContain('Standard input has no name');
  });

  test('a whole episode into a folder', async () => {
    const host = memoryHost({
      'e/episode.yaml': 'cuts: "cuts/*.cut"\n',
      'e/cuts/1.cut': CUT,
      'e/cuts/2.cut': TWO,
      'e/house.cut': 'phrase p = 1\n',
    });
    expect(await run(host, 'build', 'e', '-o', 'out')).toEqual({
      status: 0,
      out: '',
      error: 'wrote 2 files, 4 pages, in out\n',
    });
    expect(fileNames(host).filter((name) => name.startsWith('out/'))).toEqual(['out/1.pdf', 'out/2.pdf']);
  });

  test('without files: the episode that the current folder lies in', async () => {
    const files = {
      'episode.yaml': 'cuts: "cuts/*.cut"\n',
      'cuts/1.cut': CUT,
      'cuts/2.cut': TWO,
      'x/3.cut': TWO,
    };
    const top = memoryHost(files);
    expect((await run(top, 'build')).error).toBe('wrote 2 files, 4 pages, in cuts\n');
    expect(fileNames(top).filter((name) => name.endsWith('.pdf'))).toEqual(['cuts/1.pdf', 'cuts/2.pdf']);
    const below = Object.assign(memoryHost(files), { cwd: '/work/cuts' });
    expect((await run(below, 'build', '-o', 'out')).error).toBe('wrote 2 files, 4 pages, in out\n');
    expect(fileNames(below).filter((name) => name.endsWith('.pdf'))).toEqual([
      'cuts/out/1.pdf',
      'cuts/out/2.pdf',
    ]);
  });

  test('without files, outside any episode: wrong use', async () => {
    const { status, error } = await run(memoryHost({ '1.cut': CUT }), 'build');
    expect([status, error]).toEqual([2, expect.stringContaining('this folder lies in no episode')]);
  });

  test('the folder is swept of what killed runs left', async () => {
    const host = memoryHost({ 'e/episode.yaml': '', 'e/1.cut': CUT, 'e/b/2.cut': TWO });
    await run(host, 'build', 'e');
    expect(host.swept).toEqual(['/work/e', '/work/e/b']);
    await run(host, 'build', 'e', '--one-file', '-o', 'out/all.pdf');
    expect(host.swept.at(-1)).toBe('/work/out');
  });

  test('a shared file in the folder is passed over', async () => {
    const host = memoryHost({ 'a.cut': `use "h.cut"\n${CUT}`, 'h.cut': 'phrase walk = 1--2--\n' });
    expect(await run(host, 'build', '.')).toMatchObject({ status: 0, error: 'wrote a.pdf: 2 pages\n' });
    expect((await run(host, 'build', 'h.cut')).status).toBe(2);
  });
});

describe('what is wrong with one cut', () => {
  test('never stops the others', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'b.cut': BROKEN, 'c.cut': TWO });
    const { status, error } = await run(host, 'build', 'a.cut', 'b.cut', 'c.cut');
    expect(status).toBe(1);
    expect(fileNames(host)).toEqual(['a.cut', 'a.pdf', 'b.cut', 'c.cut', 'c.pdf']);
    expect(error).toMatch(/wrote 2 files, 4 pages, in \.\nnot printed: cut 3 \(1 error\)\n$/);
  });

  test('is said of each in short, of many for the first', async () => {
    const cuts = Array.from({ length: 20 }, (_, i) => [`e/${i + 1}.cut`, BROKEN.replace('3', `${i + 1}`)]);
    const host = memoryHost({
      ...Object.fromEntries(cuts),
      'e/episode.yaml': '',
      'e/1.cut': 'cut 1\ntime 1+0\nA: 1:3\nB: 1:3\n',
      'e/2.cut': 'cat 2\n',
    });
    const { error } = await run(host, 'build', 'e');
    const last = error.split('\n').at(-2)!;
    expect(last).toMatch(
      /^not printed: cut 1 \(2 errors\), e\/2\.cut \(\d+ errors?\), cut 3 \(1 error\), .*cut 12 \(1 error\) and 8 more$/,
    );
  });

  test('leaves the last good PDF as it is', async () => {
    const host = memoryHost({ 'b.cut': BROKEN, 'b.pdf': 'the last good one' });
    expect((await run(host, 'build', 'b.cut')).status).toBe(1);
    expect(Buffer.from(host.files.get('/work/b.pdf')!).toString()).toBe('the last good one');
  });

  test('warnings print all the same, but not with --strict', async () => {
    const files = { 'a.cut': 'cut 3\ntime 1+0\nA: 1..\nB: x..\n' };
    const host = memoryHost(files);
    expect((await run(host, 'build', 'a.cut')).status).toBe(0);
    expect(fileNames(host)).toContain('a.pdf');
    const strict = memoryHost(files);
    expect((await run(strict, 'build', 'a.cut', '--strict')).status).toBe(1);
    expect(fileNames(strict)).toEqual(['a.cut']);
  });

  test('a manifest with a fault keeps its cuts from printing', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'episode.yaml': 'papper: A3' });
    expect((await run(host, 'build', 'a.cut')).status).toBe(1);
    expect(fileNames(host)).toEqual(['a.cut', 'episode.yaml']);
  });

  test('a fault of the program in one cut does not stop the next', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'b.cut': TWO });
    const { read } = host;
    host.read = (path) => {
      if (path.endsWith('a.cut')) throw new Error('a fault that was made');
      return read(path);
    };
    const { status, error } = await run(host, 'build', 'a.cut', 'b.cut');
    expect(status).toBe(2);
    expect(error).toContain('a.cut: error[internal-fault]');
    expect(fileNames(host)).toContain('b.pdf');
  });
});

describe('what must not be written over', () => {
  test('two cuts that would go into one file: neither is written', async () => {
    const host = memoryHost({ 'day/c1.cut': CUT, 'night/c1.cut': TWO, 'night/c2.cut': TWO });
    const { status, error } = await run(host, 'build', 'day', 'night', '-o', 'out');
    expect(status).toBe(2);
    expect(error.match(/error\[same-output\]/g)).toHaveLength(2);
    expect(fileNames(host).filter((name) => name.startsWith('out/'))).toEqual(['out/c2.pdf']);
  });

  test('links to one folder are seen through', async () => {
    const host = memoryHost({ 'a/c1.cut': CUT, 'out/x.txt': '' });
    host.links.set('/work/same', 'out');
    expect((await run(host, 'build', 'a/c1.cut', '-o', 'same')).status).toBe(0);
    expect(fileNames(host)).toContain('out/c1.pdf');
  });

  test.each([
    ['the cut itself', 'a.cut'],
    ['a cut that is not read', 'other.cut'],
    ['the manifest', 'episode.yaml'],
    ['a used file', 'h.txt'],
    ['the cut, by a link', 'link.pdf'],
  ])('%s', async (_, output) => {
    const files = {
      'a.cut': `use "h.txt"\n${CUT}`,
      'other.cut': TWO,
      'h.txt': 'phrase p = 1\n',
      'episode.yaml': 'title: X\n',
    };
    const host = memoryHost(files);
    host.links.set('/work/link.pdf', 'a.cut');
    const { status, error } = await run(host, 'build', 'a.cut', '-o', output);
    expect(status).toBe(2);
    expect(error).toContain('error[output-is-input]');
    for (const [name, text] of Object.entries(files))
      expect(Buffer.from(host.files.get(`/work/${name}`)!).toString()).toBe(text);
  });
});

describe('a disk that refuses', () => {
  test('full: told with the file, the last good PDF whole, exit 2', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'a.pdf': 'old' });
    host.room = 100;
    const { status, error } = await run(host, 'build', 'a.cut');
    expect(status).toBe(2);
    expect(error).toContain('a.cut: error[output-unwritable]: `a.pdf` cannot be written: the disk is full.');
    expect(Buffer.from(host.files.get('/work/a.pdf')!).toString()).toBe('old');
  });

  test('a folder in the way, a locked folder', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'a.pdf/x': '', 'locked/x': '' });
    host.locked.add('/work/locked');
    expect((await run(host, 'build', 'a.cut')).error).toContain('is a folder');
    expect((await run(host, 'build', 'a.cut', '-o', 'locked/a.pdf')).error).toContain('permission denied');
    expect(fileNames(host)).toEqual(['a.cut', 'a.pdf/x', 'locked/x']);
  });

  test('the font of the installation gone: a fault of the program, and no crash', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    host.font = () => ({ ok: false, reason: 'no such file' });
    expect(await run(host, 'build', 'a.cut')).toMatchObject({
      status: 2,
      error: expect.stringContaining('internal-fault'),
    });
  });
});

describe('the document', () => {
  const LONG = 'cut 12 "Rooftop & dusk"\ntime 13+0\nartist "M. Arai"\nA "Nao": (1--2--)..\n';
  let pdf: Looked;

  const built = async (...argv: string[]) => {
    const host = memoryHost({ 'c.cut': LONG, 'episode.yaml': 'title: Harbour Lights\nepisode: 7\n' });
    const { status, error } = await run(host, 'build', 'c.cut', ...argv);
    expect({ status, error: error.match(/error.*/) }).toEqual({ status: 0, error: null });
    return lookInto(host.files.get('/work/c.pdf')!);
  };

  beforeAll(async () => {
    pdf = await built();
  });

  test('is titled, and names its author and language', () => {
    expect(pdf).toMatchObject({
      title: 'Harbour Lights 7 · Cut 12 Rooftop & dusk',
      author: 'M. Arai',
      language: 'en',
    });
  });

  test('has the sheet, then the charts, with labels', () => {
    expect(pdf.labels).toEqual(['1', '2', '3', 'charts 1']);
  });

  test('has an outline of cut, parts and pages', () => {
    expect(pdf.outline).toEqual([
      {
        title: 'Cut 12 Rooftop & dusk',
        page: 0,
        children: [
          {
            title: 'Sheet',
            page: 0,
            children: ['1', '2', '3'].map((title, page) => ({ title, page, children: [] })),
          },
          { title: 'In-between charts', page: 3, children: [{ title: 'charts 1', page: 3, children: [] }] },
        ],
      },
    ]);
  });

  test('prints chosen pages and parts', async () => {
    expect((await built('--pages', '2-3')).labels).toEqual(['2', '3']);
    expect((await built('--pages', '3-')).labels).toEqual(['3', 'charts 1']);
    expect((await built('--pages', '1,4')).labels).toEqual(['1', 'charts 1']);
    expect((await built('--only', 'sheet')).labels).toEqual(['1', '2', '3']);
    expect((await built('--only', 'charts')).labels).toEqual(['charts 1']);
    expect(
      (await built('--only', 'charts', '--pages', '1')).outline[0]!.children.map(({ title }) => title),
    ).toEqual(['In-between charts']);
  });

  test('looks as the command line says', async () => {
    // Sizes in points: mm × 72 / 25.4. Source: ISO 216 (A4 210 × 297, A3 297 × 420), CSS page sizes (legal 215.9 × 355.6).
    const size = ({ sizes }: Looked) => sizes[0]!.map((points) => Math.round((points * 25.4) / 7.2) / 10);
    expect(size(pdf)).toEqual([210, 297]);
    expect(size(await built('--paper', 'A3'))).toEqual([297, 420]);
    const west = await built('--convention', 'west', '--paper', 'legal');
    expect(size(west)).toEqual([215.9, 355.6]);
    // 13 s are 312 rows: 96 a page in the west, 144 in Japan.
    expect(west.labels.filter((label) => !label.startsWith('charts'))).toHaveLength(4);
    expect((await built('--rows', '72')).labels).toContain('5');
    const ja = await built('--labels', 'ja');
    expect(ja.language).toBe('ja');
    expect(ja.outline[0]!.title).toBe('カット 12 Rooftop & dusk');
    expect(ja.outline[0]!.children.map(({ title }) => title)).toEqual(['シート', '中割り']);
  });

  test('has the stamp at the foot of every page: the hash of the text, and the commit', async () => {
    const host = memoryHost({ 'c.cut': LONG });
    host.commits.set('/work', '9bfdb48');
    await run(host, 'build', 'c.cut');
    const { texts } = await lookInto(host.files.get('/work/c.pdf')!);
    for (const page of texts) expect(page).toMatch(/[0-9a-f]{10} · 9bfdb48/);
  });

  test('has no path of this machine in it', async () => {
    const host = memoryHost({ '/secret/place/c.cut': LONG, '/secret/place/episode.yaml': 'title: X' });
    await run(host, 'build', '/secret/place/c.cut', '-o', 'c.pdf');
    const bytes = Buffer.from(host.files.get('/work/c.pdf')!).toString('latin1');
    const { title, texts } = await lookInto(host.files.get('/work/c.pdf')!);
    expect([bytes, title, ...texts].join()).not.toMatch(/secret|\/work/);
  });

  test('is the same bytes at another time, in another place, in company or alone', async () => {
    const bytes = async (path: string, clock: string, ...others: string[]) => {
      const host = memoryHost({ [path]: LONG, 'o.cut': CUT });
      host.clock = new Date(clock);
      await run(host, 'build', path, ...others, '-o', 'out');
      return Buffer.from(host.files.get('/work/out/c.pdf')!).toString('base64');
    };
    const once = await bytes('c.cut', '2001-01-01');
    expect(await bytes('c.cut', '2031-07-09')).toBe(once);
    expect(await bytes('/else/where/c.cut', '2001-01-01')).toBe(once);
    expect(await bytes('c.cut', '2001-01-01', 'o.cut')).toBe(once);
  });
});

describe('blank', () => {
  const forms = async (files: Record<string, string>, ...argv: string[]) => {
    const host = memoryHost(files);
    const { status, error } = await run(host, 'blank', ...argv);
    expect({ status, error: error.match(/error.*/) }).toEqual({ status: 0, error: null });
    return lookInto(host.files.get('/work/blank.pdf')!);
  };

  test('prints copies of the form, on the paper and in the language that was asked for', async () => {
    const { texts, sizes, language } = await forms(
      {},
      '--convention',
      'west',
      '--paper',
      'legal',
      '--levels',
      '6',
      '--pages',
      '2',
    );
    expect(texts).toHaveLength(2);
    expect(texts[0]).toBe(texts[1]);
    expect(sizes.map(([width]) => Math.round(width!))).toEqual([612, 612]);
    expect(language).toBe('en');
    expect((await forms({}, '-l', 'ja')).language).toBe('ja');
  });

  test('is the form of the episode that the folder belongs to', async () => {
    const { sizes, language, title } = await forms({
      'episode.yaml': 'paper: A3\nlabels: ja\ntitle: Harbour\n',
    });
    expect([Math.round(sizes[0]![0]!), language]).toEqual([842, 'ja']);
    expect(title).toContain('Harbour');
  });

  test('to standard output, and not onto a full disk', async () => {
    const host = memoryHost();
    expect((await run(host, 'blank', '-o', '-')).status).toBe(0);
    expect(isPdf(host.printedBytes())).toBe(true);
    host.room = 10;
    expect(await run(host, 'blank')).toMatchObject({
      status: 2,
      error: expect.stringContaining('the disk is full'),
    });
    expect(fileNames(host)).toEqual([]);
  });
});

test('a file that is no text and a text that is no cut', async () => {
  expect((await runOn({ 'a.pdf': '%PDF-1.7\n\u0000' }, 'build', 'a.pdf')).status).toBe(1);
  expect((await runOn({ 'a.txt': 'hello' }, 'build', 'a.txt')).status).toBe(1);
});

test.each([
  ['build', 'a.cut'],
  ['build', '--one-file', 'a.cut'],
  ['export', 'a.cut'],
  ['export', '-t', 'drawings', 'a.cut'],
  ['export', '-e', 'edl', 'a.cut'],
])('an empty --output is a fault, not the current folder: %s %s', async (...words) => {
  const host = memoryHost({ 'a.cut': CUT });
  const { status, error } = await run(host, ...words, '--output', '');
  expect([status, error]).toEqual([2, expect.stringContaining('`--output` takes a file or a folder')]);
  expect(fileNames(host)).toEqual(['a.cut']);
});
