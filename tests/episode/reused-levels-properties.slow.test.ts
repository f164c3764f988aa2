/** Random references between the cuts of an episode, circles and slips among them. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compiled } from './episode.js';

const COUNT = 6;
const levels = ['A', 'B'];
const reference = fc.record({
  cut: fc.integer({ min: 1, max: COUNT + 1 }),
  level: fc.constantFrom('A', 'B', 'C'),
});
const length = fc.constantFrom('', '12', '24', '1+0', 'x');
const cuts = fc.array(
  fc.record({
    reuse: fc.array(fc.option(reference), { minLength: 2, maxLength: 2 }),
    into: length,
    out: length,
    fps: fc.constantFrom('', '', '', 'fps 12'),
  }),
  { minLength: COUNT, maxLength: COUNT },
);

function filesOf(episode: typeof cuts extends fc.Arbitrary<infer T> ? T : never): Record<string, string> {
  return Object.fromEntries(
    episode.map(({ reuse, into, out, fps }, i) => [
      `c${i + 1}.cut`,
      [
        `cut ${i + 1}`,
        'time 4+0',
        fps,
        into && `overlap in ${into}`,
        out && `overlap out ${out}`,
        ...reuse.flatMap((one, k) => (one ? [`level ${levels[k]} reuse ${one.cut}/${one.level}`] : [])),
        ...levels.map((level, k) => `${level}: ${i + k + 1}-${i + k + 2}..`),
        '',
      ].join('\n'),
    ]),
  );
}

const seen = (one: Awaited<ReturnType<typeof compiled>>[string]) => ({
  diagnostics: one!.diagnostics,
  counts: one!.solved?.counts,
  drawings: one!.solved?.levels.map(({ drawings }) => drawings),
  surroundings: one!.surroundings,
  digest: one!.digest,
});

test('a cut is told the same alone as among all, whatever was compiled before it', async () => {
  await fc.assert(
    fc.asyncProperty(cuts, async (episode) => {
      const files = filesOf(episode);
      const all = await compiled(files);
      const names = Object.keys(files);
      const backwards = await compiled(files, ...names.toReversed());
      for (const name of names) {
        const alone = (await compiled(files, name))[name]!;
        expect(seen(alone)).toEqual(seen(all[name]!));
        expect(seen(backwards[name]!)).toEqual(seen(all[name]!));
      }
    }),
    { numRuns: 40, seed: 12 },
  );
});

test('both cuts of a join are told, or neither', async () => {
  await fc.assert(
    fc.asyncProperty(cuts, async (episode) => {
      const all = await compiled(filesOf(episode));
      const found = Object.values(all).flatMap((one) => one.diagnostics.map(({ code }) => code as string));
      const count = (code: string) => found.filter((one) => one === code).length;
      expect(count('overlap-differs') % 2).toBe(0);
      expect(count('overlap-fps') % 2).toBe(0);
      expect(count('overlap-missing')).toBe(count('overlap-unanswered'));
    }),
    { numRuns: 40, seed: 13 },
  );
});
