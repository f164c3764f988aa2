import { describe, expect, test } from 'vitest';
import { appendProgress, type NewRow } from '../../src/episode/append-progress.js';
import { openEpisode } from '../../src/episode/manifest.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';

const HEAD = 'cut,stage,state,date,person,note\n';
const ROW: NewRow = {
  ...{ cut: '12', stage: 'layout', state: 'done', date: '2027-03-19' },
  ...{ person: 'L. Quoy', note: '' },
};

function world(table?: string): MemoryHost {
  return memoryHost({
    'episode.yaml': 'fps: 24\n',
    ...(table === undefined ? {} : { 'progress.csv': table }),
  });
}

function append(host: MemoryHost, ...rows: readonly Partial<NewRow>[]) {
  const episode = openEpisode(host, '/work/episode.yaml', 'episode.yaml');
  const { written, diagnostics } = appendProgress(
    host,
    episode,
    rows.map((row) => ({ ...ROW, ...row })),
  );
  return { written, said: diagnostics.map((one) => `${one.code}: ${messageOf(one, 'en')}`) };
}

const text = (host: MemoryHost): string =>
  Buffer.from(host.files.get('/work/progress.csv') ?? new Uint8Array()).toString('utf8');

describe('rows', () => {
  test('stand at the end, and all else stays', () => {
    const host = world(`${HEAD}1,layout,done,2027-03-01,,\n`);
    expect(append(host, {}, { cut: '13' })).toEqual({ written: true, said: [] });
    expect(text(host)).toBe(
      `${HEAD}1,layout,done,2027-03-01,,\n12,layout,done,2027-03-19,L. Quoy,\n13,layout,done,2027-03-19,L. Quoy,\n`,
    );
  });

  test('keep a byte-order mark, which spreadsheets need', () => {
    const host = world(`\ufeff${HEAD}`);
    append(host, {});
    expect(text(host)).toBe(`\ufeff${HEAD}12,layout,done,2027-03-19,L. Quoy,\n`);
  });

  test('are written with a hint where they are early', () => {
    const host = world(HEAD);
    expect(append(host, { stage: 'key' })).toMatchObject({
      written: true,
      said: [expect.stringMatching(/^progress-order/)],
    });
  });
});

describe('nothing is written', () => {
  const untouched = (host: MemoryHost, ...rows: readonly Partial<NewRow>[]): string => {
    const before = text(host);
    const { written, said } = append(host, ...rows);
    expect(written).toBe(false);
    expect(text(host)).toBe(before);
    expect([...host.files.keys()].filter((name) => name.endsWith('.tmp'))).toEqual([]);
    return said.at(-1)!;
  };

  test('where the stage is done already, not even the other rows', () => {
    const host = world(`${HEAD}12,layout,done,2027-03-01,,\n`);
    expect(untouched(host, { cut: '13' }, {})).toContain('layout is done already, on 2027-03-01');
  });

  test('where it is done on a later day', () => {
    const host = world(`${HEAD}12,layout,done,2027-03-25,R. Esk,\n`);
    expect(untouched(host, {})).toContain('layout is done already, on 2027-03-25, R. Esk');
  });

  test('where the same command names a cut twice', () => {
    expect(untouched(world(HEAD), {}, {})).toContain('layout is done already');
  });

  test('where somebody saves the file meanwhile: what they saved stands', () => {
    const host = world(HEAD);
    const { read } = host;
    host.read = (path) => {
      const own = read(path);
      if (path.endsWith('progress.csv') && text(host) === HEAD)
        host.files.set(path, Buffer.from(`${HEAD}7,layout,done,2027-03-02,R. Esk,\n`));
      return own;
    };
    const { written, said } = append(host, {});
    expect([written, said]).toEqual([
      false,
      ['output-unwritable: `progress.csv` cannot be written: it was saved meanwhile.'],
    ]);
    expect(text(host)).toBe(`${HEAD}7,layout,done,2027-03-02,R. Esk,\n`);
  });

  test('where somebody makes the file meanwhile', () => {
    const host = world();
    const { kind } = host;
    let looks = 0;
    host.kind = (path) => {
      if (path.endsWith('progress.csv') && ++looks === 3) host.files.set(path, Buffer.from(HEAD));
      return kind(path);
    };
    expect(append(host, {}).written).toBe(false);
    expect(text(host)).toBe(HEAD);
  });

  test('where a spreadsheet has it open', () => {
    const host = world(HEAD);
    host.files.set('/work/.~lock.progress.csv#', Buffer.from(',tarn,desk;'));
    expect(untouched(host, {})).toContain('open in another program');
  });

  test('where another process writes to it', () => {
    const host = world(HEAD);
    host.lockedFolders.add('/work/progress.csv');
    expect(untouched(host, {})).toContain('Process 1 writes to `progress.csv` at this moment');
  });

  test('where the table cannot be read, or lacks a column', () => {
    expect(untouched(world('kut,stage,date\n'), {})).toContain('no column `date`'.replace('date', 'cut'));
    expect(untouched(world('cut,stage,date\n'), {})).toContain('no column `person`');
  });

  test('where the disk refuses', () => {
    const host = world(HEAD);
    host.room = 10;
    expect(untouched(host, {})).toMatch(/^output-unwritable/);
  });
});

test('the lock is given back, whatever happens', () => {
  const host = world(HEAD);
  append(host, {});
  append(host, {});
  expect([...host.lockedFolders]).toEqual([]);
});
