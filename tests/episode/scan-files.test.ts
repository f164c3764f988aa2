import { describe, expect, it, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type ScanFile, scanFileOf } from '../../src/episode/scan-files.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';

const MANIFEST = 'drawings: scans/{cut:3}/{level}{number}.png\n';

async function opened(host: MemoryHost, name: string) {
  const { jobs } = await findCuts(host, [name]);
  const [job] = jobs;
  return { job: job!, compiled: compile(host, job!.path, job!.episode, { name: job!.name }) };
}

/** The file of a level's drawing. */
async function fileOf(
  files: Readonly<Record<string, string>>,
  name: string,
  level: string,
  number: number | null,
): Promise<ScanFile | null> {
  const host = memoryHost(files);
  const { job, compiled } = await opened(host, name);
  const index = compiled.solved!.levels.findIndex((one) => one.name === level);
  const at = { place: job.path!, file: job.name };
  return scanFileOf(host, at, compiled.solved!, job.episode, index, number);
}

const cut = (lines: string): string => `cut 12\ntime 1+0\nstack BG A\n${lines}\nA: 1--2..\n`;

describe('the file of a drawing', () => {
  it('is named by the episode, from its folder', async () => {
    const files = { 'ep/episode.yaml': MANIFEST, 'ep/cuts/c.cut': cut('') };
    expect(await fileOf(files, 'ep/cuts/c.cut', 'A', 3)).toEqual({
      path: '/work/ep/scans/012/A3.png',
      name: 'scans/012/A3.png',
    });
    expect((await fileOf(files, 'ep/cuts/c.cut', 'BG', null))!.name).toBe('scans/012/BG.png');
  });

  it('is what the level says, beside the cut', async () => {
    const files = { 'ep/episode.yaml': MANIFEST, 'ep/cuts/c.cut': cut('level BG picture "bg/sea.png"') };
    expect(await fileOf(files, 'ep/cuts/c.cut', 'BG', null)).toEqual({
      path: '/work/ep/cuts/bg/sea.png',
      name: 'bg/sea.png',
    });
  });

  it('is beside the used file where that says it', async () => {
    const files = {
      'ep/episode.yaml': MANIFEST,
      'ep/house/house.cut': 'level BG picture "sea.png"\n',
      'ep/cuts/c.cut': `use "../house/house.cut"\n${cut('')}`,
    };
    expect((await fileOf(files, 'ep/cuts/c.cut', 'BG', null))!.path).toBe('/work/ep/house/sea.png');
  });

  it('is the other cut’s for a drawing that is reused, this one’s for one that is added', async () => {
    const files = {
      'episode.yaml': MANIFEST,
      '8.cut': 'cut 8\ntime 1+0\nC: 1--2..\n',
      '12.cut': 'cut 12\ntime 1+0\nstack BG A\nlevel A reuse 8/C\nA: 1--2-3..\n',
    };
    expect((await fileOf(files, '12.cut', 'A', 4))!.name).toBe('scans/008/C4.png');
    expect((await fileOf(files, '12.cut', 'A', 5))!.name).toBe('scans/012/A5.png');
  });

  it('is nowhere in an episode that says nothing', async () => {
    expect(await fileOf({ '12.cut': cut('') }, '12.cut', 'A', 1)).toBeNull();
  });
});

describe('a scan out of reach', () => {
  const codes = async (
    files: Readonly<Record<string, string>>,
    name: string,
    links: [string, string][] = [],
  ) => {
    const host = memoryHost(files);
    for (const [from, to] of links) host.links.set(from, to);
    return (await opened(host, name)).compiled.diagnostics.map(({ code }) => code);
  };
  const inEpisode = (path: string) => ({
    'ep/episode.yaml': '',
    'ep/cuts/c.cut': cut(`level BG picture "${path}"`),
  });

  test.each(['../../sea.png', '/work/ep/sea.png', 'C:/sea.png', 'x/../../../sea.png'])(
    '%s is an error',
    async (path) => {
      expect(await codes(inEpisode(path), 'ep/cuts/c.cut')).toContain('scan-outside');
    },
  );

  test.each(['sea.png', '../art/sea.png', 'x/y/sea{number}.png'])('%s is none', async (path) => {
    expect(await codes(inEpisode(path), 'ep/cuts/c.cut')).toEqual([]);
  });

  it('behind a link is an error', async () => {
    const files = { ...inEpisode('../art/sea.png'), 'elsewhere/sea.png': '' };
    expect(await codes(files, 'ep/cuts/c.cut', [['/work/ep/art', '/work/elsewhere']])).toContain(
      'scan-outside',
    );
  });

  it('is none where the whole episode lies behind a link, though nothing is drawn yet', async () => {
    const files = inEpisode('../art/sea.png');
    expect(await codes(files, 'link/cuts/c.cut', [['/work/link', '/work/ep']])).toEqual([]);
  });
});
