/**
 * What is handed over to the cutting room, read back by readers of the published formats (edl-reader.ts, otio-reader.ts name their
 * sources) and played frame by frame: every row of every sheet must be seen where the trade's rule for overlaps puts it.
 */

import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { episodeOf } from '../../src/episode/find-cuts.js';
import { edlText, reelsOf } from '../../src/export/edit-decision-list.js';
import { editOf, type Handed } from '../../src/export/episode-edit.js';
import { otioText } from '../../src/export/otio.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { run } from '../command/run.js';
import { generateEpisode } from '../episode/whole/generate.js';
import { worldOf } from '../episode/whole/world.js';
import { playEdl, readEdl } from './edl-reader.js';
import { clipsOf, playOtio, readOtio } from './otio-reader.js';

fc.configureGlobal({ seed: Number(process.env.SEED ?? 1907) });

interface Plan {
  readonly fps: number;
  readonly overlap: 'half' | 'full';
  /** Frames of each cut, and the dissolve into the next one (0: none). */
  readonly cuts: readonly { readonly time: number; readonly dissolve: number }[];
}

/** The cuts of a plan, by way of their texts. */
async function cutsOf({ fps, overlap, cuts }: Plan): Promise<Handed[]> {
  const host = memoryHost({ 'episode.yaml': `title: T\nfps: ${fps}\noverlap: ${overlap}\n` });
  const episode = await episodeOf(host, '/work');
  return cuts.map(({ time, dissolve }, i) => {
    const into = cuts[i - 1]?.dissolve ?? 0;
    const lines = [
      `cut ${i + 1}\ntime ${time}\nA: 1..`,
      into > 0 ? `overlap in ${into}` : '',
      dissolve > 0 ? `overlap out ${dissolve}` : '',
    ];
    const bytes = Buffer.from(lines.filter(Boolean).join('\n'));
    const { solved, diagnostics } = compile(host, null, episode, { bytes });
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    return solved!;
  });
}

/**
 * Common practice (no source): `half`, a cut's time runs to the middle of the dissolve, the outgoing cut has the smaller half of an odd
 * length beyond it; `full`, both times hold the whole dissolve, which is seen once.
 */
function expected({ overlap, cuts }: Plan): string[][] {
  const seen: string[][] = [];
  let cutPoint = 0;
  cuts.forEach(({ time, dissolve }, i) => {
    const into = cuts[i - 1]?.dissolve ?? 0;
    const half = overlap === 'half';
    const first = cutPoint - (half ? Math.ceil(into / 2) : into);
    const rows = time + (half ? Math.ceil(into / 2) + Math.floor(dissolve / 2) : 0);
    for (let row = 0; row < rows; row++) {
      seen[first + row] = [...(seen[first + row] ?? []), `${i + 1} ${row}`];
    }
    cutPoint += time - (half ? 0 : into);
  });
  return seen;
}

const plans = fc.record({
  fps: fc.constantFrom(24, 25, 30),
  overlap: fc.constantFrom('half' as const, 'full' as const),
  cuts: fc
    .array(
      fc.record({ time: fc.integer({ min: 24, max: 90 }), dissolve: fc.integer({ min: -6, max: 11 }) }),
      {
        minLength: 1,
        maxLength: 12,
      },
    )
    .map((cuts) =>
      cuts.map(({ time, dissolve }, i) => ({
        time,
        dissolve: i < cuts.length - 1 && dissolve > 1 ? dissolve : 0,
      })),
    ),
});

describe('random episodes with dissolves', () => {
  test('are the same film on the sheets, in the edit list and in the timeline', async () => {
    await fc.assert(
      fc.asyncProperty(plans, fc.integer({ min: 0, max: 30_000 }), async (plan, start) => {
        const film = expected(plan);
        const { edit } = editOf(await cutsOf(plan));
        expect(edit!.frames).toBe(film.length);

        const list = readEdl(edlText(edit!, start).text!, plan.fps);
        const reels = plan.cuts.map((_, i) => `C${i + 1}`);
        expect(playEdl(list).map((one) => one.map((name) => name.replace(/^C/, '')))).toEqual(film);
        expect(list.lines[0]!.record[0]).toBe(start);
        expect(list.lines.at(-1)!.record[1]).toBe(start + film.length);
        expect(new Set(list.lines.map(({ reel }) => reel))).toEqual(new Set(reels));

        const timeline = readOtio(otioText(edit!, start));
        expect(playOtio(timeline)).toEqual(film);
        expect(timeline.global_start_time.value).toBe(start);
      }),
      { numRuns: 40 },
    );
  });

  test('have events in a row: each begins where the one before ends, and takes as much as it shows', async () => {
    await fc.assert(
      fc.asyncProperty(plans, async (plan) => {
        const { edit } = editOf(await cutsOf(plan));
        const { lines } = readEdl(edlText(edit!, 0).text!, plan.fps);
        const shown = lines.filter((line, i) => lines[i + 1]?.event !== line.event);
        let at = 0;
        shown.forEach(({ event, source, record }, i) => {
          expect(event).toBe(i + 1);
          expect(record[0]).toBe(at);
          expect(source[1] - source[0]).toBe(record[1] - record[0]);
          [, at] = record;
        });
        expect(at).toBe(edit!.frames);
      }),
      { numRuns: 30 },
    );
  });
});

// Common practice: 4+00 and 3+00 with a dissolve of 1+00.
test.each([
  ['half', 168, 84, [0, 12], [96, 72]],
  ['full', 144, 72, [0, 12], [84, 60]],
] as const)(
  'overlap: %s: 4+00 and 3+00 with 1+00 run for %i frames',
  async (overlap, frames, from, first, long) => {
    const plan: Plan = {
      fps: 24,
      overlap,
      cuts: [
        { time: 96, dissolve: 24 },
        { time: 72, dissolve: 0 },
      ],
    };
    const { edit } = editOf(await cutsOf(plan));
    expect(edit!.frames).toBe(frames);
    const { lines } = readEdl(edlText(edit!, 0).text!, 24);
    expect(lines.map(({ effect, dissolve, record }) => [effect, dissolve, ...record])).toEqual([
      ['C', 0, 0, from],
      ['C', 0, from, from],
      ['D', 24, from, frames],
    ]);
    const clips = clipsOf(readOtio(otioText(edit!, 0)));
    expect(
      clips.map(({ source_range: { start_time, duration } }) => [start_time.value, duration.value]),
    ).toEqual(first.map((at, i) => [at, long[i]]));
  },
);

test('the demo episode is handed over with its running time, cut by cut', async () => {
  const folder = 'examples/saltmarsh';
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const texts = names.filter((name) => /\.(cut|yaml)$/.test(name));
  const host = memoryHost(
    Object.fromEntries(texts.map((name) => [name, readFileSync(`${folder}/${name}`)] as const)),
  );
  const edl = await run(host, 'export', '.', '--edit', 'edl', '--start', '01:00:00:00');
  const otio = await run(host, 'export', '.', '--edit', 'otio');
  const exported = await run(host, 'export', '.', '-t', 'camera');
  expect([edl.status, otio.status], edl.error).toEqual([0, 0]);

  const list = readEdl(edl.out, 24);
  const timeline = readOtio(otio.out);
  expect([list.title, timeline.name]).toEqual(['Samphire Ferry 3', 'Samphire Ferry 3']);
  // The clock of the record begins at one hour.
  expect(list.lines[0]!.record[0]).toBe(3600 * 24);
  const played = playOtio(timeline);
  expect(playEdl(list).map((one) => one.map((name) => name.replace(/^C/, '')))).toEqual(played);
  // Every row that the sheets have, by the rows of another table of the same cuts.
  const rows = exported.out.trim().split('\r\n').slice(1);
  const sheets = rows.map((row) => row.split(',')).map(([cut, frame]) => `${cut} ${Number(frame) - 1}`);
  expect(played.flat().sort()).toEqual(sheets.sort());
});

test.each(['half', 'full'] as const)('a generated episode with overlap: %s', async (overlap) => {
  const episode = generateEpisode({ cuts: 40, seed: 5, overlap });
  expect(episode.cuts.some(({ overlapOut }) => overlapOut > 0)).toBe(true);
  const host = worldOf(episode.files);
  const edl = await run(host, 'export', 'e', '--edit', 'edl');
  const otio = await run(host, 'export', 'e', '--edit', 'otio');
  expect([edl, otio].map(({ status, error }) => [status, error])).toEqual([
    [0, ''],
    [0, ''],
  ]);
  const film = expected({
    fps: 24,
    overlap,
    cuts: episode.cuts.map(({ timeFrames, overlapOut }) => ({ time: timeFrames, dissolve: overlapOut })),
  });
  expect(film).toHaveLength(episode.runningFrames);
  // The plan counts its cuts from 1; the episode has numbers such as 12A.
  const named = film.map((one) =>
    one.map((name) => name.replace(/^\d+/, (i) => episode.cuts[Number(i) - 1]!.number)),
  );
  expect(playOtio(readOtio(otio.out))).toEqual(named);
  const list = readEdl(edl.out, 24);
  expect(playEdl(list)).toEqual(named.map((one) => one.map((name) => `C${name}`)));
  expect(list.remarks.get(1)).toContain(`FROM CLIP NAME: ${clipsOf(readOtio(otio.out))[0]!.name}`);
});

describe('reels', () => {
  test('have a name of their own of at most eight letters and digits, whatever the cuts are called', () => {
    const cuts = fc.array(
      fc.oneof(fc.string({ unit: 'grapheme' }), fc.constantFrom('12', '012', '12A', 'ア', 'L', 'S02C0123B')),
    );
    fc.assert(
      fc.property(cuts, (names) => {
        const reels = reelsOf(names);
        expect(new Set(reels).size).toBe(names.length);
        for (const reel of reels) expect(reel).toMatch(/^[A-Z0-9]{1,8}$/);
        // Names of the format for black and for no reel.
        expect(reels).not.toContain('BL');
        expect(reels).not.toContain('AX');
      }),
    );
  });

  test('say the number of the cut where the format has letters for it', () => {
    expect(reelsOf(['12', '12A', '１３', '14ア', '14', 'S02C0123B', 'T02C0123B'])).toEqual([
      'C12',
      'C12A',
      'C13',
      'C14',
      'C14X2',
      'C2C0123B',
      'C2C012X2',
    ]);
  });
});

test('the page of the reference shows the edit list of its two cuts', async () => {
  const page = readFileSync('grammar/handover.md', 'utf8');
  const [one, two] = [...page.matchAll(/```cut\n([\s\S]*?)```/g)].map(([, text]) => text!);
  const list = /```text\n([\s\S]*?)```/.exec(page)![1]!;
  const { out } = await run(memoryHost({ '1.cut': one!, '2.cut': two! }), 'export', '.', '--edit', 'edl');
  expect(out.replaceAll('\r\n', '\n')).toBe(`TITLE: work\nFCM: NON-DROP FRAME\n\n${list}`);
});
