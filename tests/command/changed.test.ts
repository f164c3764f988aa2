/** `build --changed`: what is printed again, what is said of it, and what stays untouched to the byte. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { privateWords } from '../../src/print/private.js';
import { lookInto } from './pdf.js';
import { CUT, run } from './run.js';

/** Thirteen seconds: three pages of sheet and one of charts. Key 9 stands on the third page. */
const long = (cut: number, more = '') =>
  `cut ${cut}\ntime 13+0\nA: 1--2:6+0 3:6+0 4..\nB: (1--2--)..\n${more}`;

const FILES = {
  'e/episode.yaml': 'title: Ferry\nepisode: 3\n',
  'e/2.cut': long(2),
  'e/10.cut': CUT.replace('cut 1', 'cut 10'),
  'e/11.cut': CUT.replace('cut 1', 'cut 11'),
};

let host: MemoryHost;
const set = (name: string, text: string) => void host.files.set(`/work/${name}`, Buffer.from(text));
const pdf = (name: string) => host.files.get(`/work/${name}`);
const build = (...argv: string[]) => run(host, 'build', 'e', '-o', 'out', ...argv);
/** What a build writes, by name. */
async function written(act: () => Promise<unknown>): Promise<string[]> {
  const before = new Map(host.files);
  await act();
  return [...host.files].filter(([name, bytes]) => before.get(name) !== bytes).map(([name]) => name.slice(6));
}

beforeEach(async () => {
  host = memoryHost(FILES);
  await build();
});

describe('nothing is written', () => {
  const still = async (...argv: string[]) => {
    const ran = await build('--changed', ...argv);
    expect(ran).toEqual({ status: 0, out: '', error: '3 cuts unchanged\n' });
  };

  test('where nothing has changed', async () => {
    expect(await written(() => still())).toEqual([]);
  });

  test.each([
    ['a comment', () => set('e/2.cut', `# retimed on Monday\n${long(2)}`)],
    ['another spelling', () => set('e/2.cut', long(2).replace('1--2:6+0 3:6+0', '1--2:144   (3:144)'))],
    ['other line ends', () => set('e/2.cut', long(2).replaceAll('\n', '\r\n'))],
    [
      'the clock',
      () => {
        host.clock = new Date('2044-02-03');
      },
    ],
    ['the commit', () => void host.commits.set('/work/e', '9bfdb48')],
    [
      'a default that is written out',
      () => set('e/episode.yaml', 'title: Ferry\nepisode: 3\nfps: 24\non: 2\n'),
    ],
    [
      'a default that does not show',
      () => set('e/episode.yaml', 'title: Ferry\nepisode: 3\non: 2\nscan: 300dpi\n'),
    ],
    [
      'another story order',
      () => set('e/episode.yaml', 'title: Ferry\nepisode: 3\ncuts: [11.cut, 10.cut, 2.cut]\n'),
    ],
    [
      'a phrase of a house file',
      () => {
        set('e/house.txt', 'phrase p = 1--2\n');
        set('e/10.cut', `use "house.txt"\n${CUT.replace('cut 1', 'cut 10').replace('1--2', 'p 2')}`);
      },
    ],
  ])('for %s', async (_, change) => {
    change();
    expect(await written(() => still())).toEqual([]);
  });

  test('into another world: the folder copied elsewhere', async () => {
    const files = [...host.files].map(
      ([name, bytes]) => [name.replace('/work/', '/mnt/day/'), bytes] as const,
    );
    const other = memoryHost();
    for (const [name, bytes] of files) other.files.set(name, bytes);
    const { error } = await run(other, 'build', '/mnt/day/e', '-o', '/mnt/day/out', '--changed');
    expect(error).toBe('3 cuts unchanged\n');
  });
});

describe('what has changed is printed again, and nothing else', () => {
  test('one key: its cut, and its page', async () => {
    set('e/2.cut', long(2).replace('4..', '3a..'));
    const done = await written(async () => {
      const { status, error } = await build('--changed');
      expect(status).toBe(0);
      expect(error).toBe('cut 2: page 3 of 4\nwrote out/2.pdf: 4 pages\n2 cuts unchanged\n');
    });
    expect(done).toEqual(['out/2.pdf']);
    expect(await written(() => build('--changed'))).toEqual([]);
  });

  test('is the file that a plain build writes', async () => {
    set('e/2.cut', long(2).replace('4..', '3a..'));
    await build('--changed');
    const changed = pdf('out/2.pdf')!;
    await build();
    expect(Buffer.from(pdf('out/2.pdf')!).equals(changed)).toBe(true);
  });

  test.each([
    ['a setting of the manifest', 'title: Ferry\nepisode: 3\npaper: A3\n'],
    ['the title', 'title: Ferries\nepisode: 3\n'],
  ])('%s: every cut', async (_, manifest) => {
    set('e/episode.yaml', manifest);
    const { error } = await build('--changed');
    expect(error).toContain('cut 2: pages 1-4 of 4 (1, 2, 3, charts 1)\n');
    expect(error).toContain('wrote 3 files');
  });

  test('pages that are new, and pages that are no more', async () => {
    set('e/10.cut', 'cut 10\ntime 7+0\nA: 1--2..\n');
    expect((await build('--changed')).error).toContain('cut 10: pages 1-3 of 3 (1, 2 new, charts 1)\n');
    set('e/10.cut', 'cut 10\ntime 1+0\nA: 1..\n');
    expect((await build('--changed')).error).toContain('cut 10: page 1 of 1; no more: 2, charts 1\n');
  });

  test('a new cut, and one whose file is gone', async () => {
    set('e/12.cut', long(12));
    host.files.delete('/work/out/10.pdf');
    const { error } = await build('--changed');
    expect(error).toContain(
      'cut 10: all 2 pages, not printed before\ncut 12: all 4 pages, not printed before\n',
    );
    expect(error).toContain('wrote 2 files, 6 pages, in out\n2 cuts unchanged\n');
  });

  test('another choice of parts', async () => {
    expect((await build('--changed', '--only', 'sheet')).error).toContain(
      'cut 2: no page of 3 differs; no more: charts 1\n',
    );
    expect((await build('--changed')).error).toContain('cut 2: page 4 of 4 (charts 1 new)\n');
  });

  test('a cut with errors is not, and keeps its last good print', async () => {
    set('e/2.cut', long(2).replace('..', ''));
    const done = await written(async () => {
      const { status, error } = await build('--changed');
      expect(status).toBe(1);
      expect(error).toMatch(/\n2 cuts unchanged\nnot printed: cut 2 \(1 error\)\n$/);
    });
    expect(done).toEqual([]);
  });
});

describe('a file that tells nothing is printed anew', () => {
  const damages: [string, (bytes: Uint8Array) => Uint8Array][] = [
    ['cut short', (bytes) => bytes.subarray(0, bytes.length - 100)],
    ['cut short by a byte', (bytes) => bytes.subarray(0, bytes.length - 1)],
    ['only its end', (bytes) => bytes.subarray(4000)],
    ['empty', () => new Uint8Array()],
    ['no PDF', () => Buffer.from('hello')],
    [
      'noted in by another program, which appends',
      (bytes) => Buffer.concat([bytes, Buffer.from('9 0 obj\n<<>>\nendobj\nstartxref\n0\n%%EOF\n')]),
    ],
    ['of another version of the record', (bytes) => replaced(bytes, '(1;cut;', '(2;cut;')],
    ['with a record that cannot be read', (bytes) => replaced(bytes, '(1;cut;Ferry', '(1;cut;%zzrry')],
    ['with half a record', (bytes) => replaced(bytes, ' 1=', ' 1:')],
  ];
  test.each(damages)('%s', async (_, damage) => {
    const whole = pdf('out/2.pdf')!;
    host.files.set('/work/out/2.pdf', damage(whole));
    const { status, error } = await build('--changed');
    expect(status).toBe(0);
    expect(error).toBe(
      'cut 2: all 4 pages, as the file there is no print to compare with\nwrote out/2.pdf: 4 pages\n2 cuts unchanged\n',
    );
    expect(Buffer.from(pdf('out/2.pdf')!).equals(whole)).toBe(true);
  });

  function replaced(bytes: Uint8Array, from: string, to: string): Uint8Array {
    const text = Buffer.from(bytes).toString('latin1');
    expect(text).toContain(from);
    return Buffer.from(text.replace(from, to), 'latin1');
  }
});

describe('pages that are left out', () => {
  test('by --pages: a later build prints the whole cut', async () => {
    await build('--pages', '2-3');
    expect((await build('--changed')).error).toContain('cut 2: pages 1, 4 of 4 (1, charts 1)\n');
    expect((await lookInto(pdf('out/2.pdf')!)).labels).toEqual(['1', '2', '3', 'charts 1']);
  });

  test('by --pages changed: only what differs is printed, and then differs no more', async () => {
    set('e/2.cut', long(2).replace('4..', '3a..'));
    expect((await build('--changed', '--pages', 'changed')).error).toContain('wrote out/2.pdf: 1 page\n');
    expect((await lookInto(pdf('out/2.pdf')!)).labels).toEqual(['3']);
    expect((await build('--changed', '--pages', 'changed')).error).toBe('3 cuts unchanged\n');
    set('e/2.cut', long(2));
    expect((await build('--changed', '--pages', 'changed')).error).toContain('cut 2: page 3 of 4\n');
  });

  test('are printed once the whole cut is wanted', async () => {
    set('e/2.cut', long(2).replace('4..', '3a..'));
    await build('--changed', '--pages', 'changed');
    expect((await build('--changed')).error).toContain(
      'cut 2: all 4 pages, as the file did not hold all\nwrote out/2.pdf: 4 pages\n',
    );
  });
});

describe('files of cuts that are there no more', () => {
  test('are named, and left', async () => {
    host.files.delete('/work/e/10.cut');
    const { error } = await build('--changed');
    expect(error).toBe('out/10.pdf: no cut of the episode any more\n2 cuts unchanged\n');
    expect(pdf('out/10.pdf')).toBeDefined();
    expect((await build()).error).toContain('out/10.pdf: no cut of the episode any more\n');
  });

  test('a cut whose file has another name', async () => {
    host.files.delete('/work/e/10.cut');
    set('e/c010.cut', FILES['e/10.cut']);
    expect((await build('--changed')).error).toContain('out/10.pdf: cut 10 goes to out/c010.pdf now\n');
  });

  test('a cut whose file has another name, and which has errors', async () => {
    host.files.delete('/work/e/10.cut');
    set('e/c010.cut', FILES['e/10.cut'].replace('..', ''));
    expect((await build('--changed')).error).toContain('out/10.pdf: cut 10 goes to out/c010.pdf now\n');
  });

  test('none where the number of some cut cannot be read', async () => {
    host.files.delete('/work/e/10.cut');
    set('e/c010.cut', 'cut "no number"\ntime 1+0\nA: 1..\n');
    expect((await build('--changed')).error).not.toContain('out/10.pdf');
  });

  test('not a file of several cuts, even if only one is in it', async () => {
    await run(host, 'build', 'e/2.cut', '--one-file', '-o', 'out/all.pdf');
    expect((await build('--changed')).error).toBe('3 cuts unchanged\n');
  });

  test('not those of another episode, nor what is no print', async () => {
    host.files.set('/work/out/other.pdf', Buffer.from('%PDF-1.7'));
    await run(memoryHost({}), 'check', '.');
    set('f/episode.yaml', 'title: Harbour\n');
    set('f/99.cut', CUT.replace('cut 1', 'cut 99'));
    await run(host, 'build', 'f', '-o', 'out');
    expect((await build('--changed')).error).toBe('3 cuts unchanged\n');
  });

  test('nor where only some cuts are printed', async () => {
    const { error } = await run(host, 'build', 'e/2.cut', '-o', 'out', '--changed');
    expect(error).toBe('1 cut unchanged\n');
  });
});

describe('what does not go together', () => {
  test.each([
    [['--pages', 'changed'], '`--pages changed` needs something to compare with'],
    [['--changed', '--since', 'HEAD'], 'two comparisons'],
    [['--changed', '--pages', '2-3'], 'takes only `changed`'],
    [['--since', 'HEAD', '--pages', '2'], 'takes only `changed`'],
  ])('%s', async (argv, words) => {
    const done = await written(async () => {
      const { status, error } = await build(...argv);
      expect([status, error]).toEqual([2, expect.stringContaining(words)]);
      expect(error).toContain('^');
    });
    expect(done).toEqual([]);
  });

  test('standard output with --changed', async () => {
    const { status, error } = await run(host, 'build', 'e/2.cut', '-o', '-', '--changed');
    expect([status, error]).toEqual([2, expect.stringContaining('standard output has none')]);
  });
});

test('a folder that may not be written to: said for each cut, and nothing is lost', async () => {
  set('e/2.cut', long(2).replace('4..', '3a..'));
  const write = host.write;
  host.write = () => ({ ok: false, reason: 'permission denied' });
  const done = await written(async () => {
    const { status, error } = await build('--changed');
    expect(status).toBe(2);
    expect(error).toContain('error[output-unwritable]: `out/2.pdf` cannot be written: permission denied.');
    expect(error).toMatch(/2 cuts unchanged\nnot printed: cut 2 \(not written\)\n$/);
  });
  expect(done).toEqual([]);
  host.write = write;
  expect((await build('--changed')).error).toContain('cut 2: page 3 of 4\n');
});

describe('remarks', () => {
  const fine = 'cut 2\ntime 1+0\nfield A 60%\nfix A\nA: 1..\n';
  const warned = `${fine}overlap out 6\n`;

  test.each([['apart'], ['--one-file']])(
    'hints on a cut that is not printed again are left out: %s',
    async (way) => {
      const more = way === 'apart' ? [] : [way, '-o', 'all.pdf'];
      set('e/10.cut', fine.replace('cut 2', 'cut 10'));
      set('e/2.cut', fine);
      const first = await run(host, 'build', 'e', '--changed', ...more);
      expect(first.error.match(/hint\[scan-enlarged\]/g)).toHaveLength(2);
      set('e/2.cut', fine.replace('1..', '1:12 2..'));
      const { error } = await run(host, 'build', 'e', '--changed', ...more);
      expect(error.match(/^\S+: hint\[.*?\]/gm)).toEqual(['e/2.cut:3:1: hint[scan-enlarged]']);
      expect((await run(host, 'build', 'e', '--changed', ...more)).error).toBe('3 cuts unchanged\n');
    },
  );

  test('warnings stay', async () => {
    set('e/2.cut', warned);
    await build('--changed');
    expect((await build('--changed')).error).toMatch(/warning\[[\s\S]*\n3 cuts unchanged\n$/);
  });
});

test('the record is the file’s own, and names nothing of this machine', () => {
  const bytes = pdf('out/2.pdf')!;
  const words = privateWords((most) => ({ bytes: bytes.subarray(-most), size: bytes.length }));
  expect(words).toMatch(
    /^1;cut;Ferry%203;2 [\w-]{16} 1=[\w-]{10} 2=[\w-]{10} 3=[\w-]{10} charts%201=[\w-]{10}$/,
  );
});

test('a program that reads JSON gets no list', async () => {
  set('e/2.cut', long(2).replace('4..', '3a..'));
  const { error } = await build('--changed', '--format', 'json');
  expect(JSON.parse(error)).toMatchObject({ diagnostics: [] });
});
