import fc from 'fast-check';
import { expect, test } from 'vitest';
import { showingsOf } from '../../src/solve/text-to-frames.js';
import { compileText } from '../compile.js';
import { generatedCuts } from '../generate.js';

test('on random cuts, the items of a level cover its rows, each once, from the first item on', () => {
  fc.assert(
    fc.property(generatedCuts({ phrases: true }), ({ text, levels }) => {
      const { shot: made } = compileText(text);
      for (const level of levels) {
        const rows = showingsOf(made!, level).flatMap(({ from, to }) =>
          Array.from({ length: to - from + 1 }, (_, i) => from + i),
        );
        // Before an `@` that comes first the level is empty.
        const from = /^@(\d+)/.exec(text.split(`\n${level}`)[1]!.replace(/^[^:]*:\s*/, ''))?.[1] ?? '1';
        expect(rows).toEqual(
          Array.from({ length: made!.length - Number(from) + 1 }, (_, i) => Number(from) + i),
        );
      }
    }),
    { numRuns: 60 },
  );
});
