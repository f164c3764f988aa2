import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { pictureOf } from '../../src/picture/frame-list.js';
import { openCanvas } from '../../src/shoot/canvas-kit.js';
import { CutDrawings, ScanCache } from '../../src/shoot/cut-drawings.js';

const png = (width = 100, height = 50): Uint8Array => createCanvas(width, height).toBuffer('image/png');

const FILES = {
  'episode.yaml': 'drawings: scans/{level}{number}.png\nscan: 100dpi\n',
  'c.cut': 'cut 12\ntime 1+0\nstack BG A\nA: 1:8 2:8 3..\n',
  'scans/A1.png': png(),
  'scans/A2.png': 'no picture',
  'scans/BG.png': png(),
};

async function opened(mostPixels?: number) {
  const host = memoryHost(FILES);
  let reads = 0;
  const counted = {
    ...host,
    readPart: (...args: Parameters<typeof host.readPart>) => {
      reads += 1;
      return host.readPart(...args);
    },
  };
  const { jobs } = await findCuts(host, ['c.cut']);
  const { episode, path, name } = jobs[0]!;
  const solved = compile(host, path, episode, { name }).solved!;
  const cut = pictureOf(solved);
  const cache = new ScanCache(counted, openCanvas(host)!, mostPixels);
  const drawings = new CutDrawings(counted, cache, { cut, solved, episode, place: path!, file: name }, 4);
  return { cut, drawings, reads: () => reads };
}

describe('the drawings of a cut', () => {
  it('are those of the prepared frame', async () => {
    const { cut, drawings } = await opened();
    await drawings.prepare(cut.frames[0]!);
    expect(drawings.drawing(0, null)?.kind).toBe('picture');
    expect(drawings.drawing(1, 1)?.kind).toBe('picture');
    await drawings.prepare(cut.frames[8]!);
    expect(drawings.drawing(1, 2)).toEqual({ kind: 'unreadable', fault: 'scans/A2.png' });
    await drawings.prepare(cut.frames[16]!);
    expect(drawings.drawing(1, 3)).toBeNull();
  });

  it('are read once', async () => {
    const { cut, drawings, reads } = await opened();
    for (const frame of cut.frames) await drawings.prepare(frame);
    expect(reads()).toBe(4);
  });

  it('are given up where memory is short, but not those of the frame itself', async () => {
    const { cut, drawings, reads } = await opened(5000);
    await drawings.prepare(cut.frames[0]!);
    expect(drawings.drawing(0, null)?.kind).toBe('picture');
    expect(drawings.drawing(1, 1)?.kind).toBe('picture');
    const first = reads();
    await drawings.prepare(cut.frames[20]!);
    await drawings.prepare(cut.frames[0]!);
    expect(reads()).toBeGreaterThan(first + 1);
  });

  it('are counted: how many were asked for, which are missing, which cannot be read', async () => {
    const { cut, drawings } = await opened();
    for (const frame of cut.frames) await drawings.prepare(frame);
    expect(drawings.asked.size).toBe(4);
    expect([...drawings.missing]).toEqual(['1 3']);
    expect([...drawings.unreadable.values()]).toEqual([
      { cut: 'c.cut', level: 'A', file: 'scans/A2.png', reason: { why: 'format' } },
    ]);
  });
});
