import { expect, test } from 'vitest';
import { run } from '../../../command/run.js';
import { englishIn } from '../../../japanese-text.js';
import { IN_EPISODE, OPTION_VALUES, usageEpisode, usageWorld, WRONG_ARGUMENTS } from '../usage-lines.js';

const cases = [
  ...OPTION_VALUES.map(([line]) => ({ line, world: usageWorld, code: 'option-value' })),
  ...WRONG_ARGUMENTS.map(([line]) => ({ line, world: usageWorld, code: 'wrong-arguments' })),
  ...IN_EPISODE.map(([line]) => ({ line, world: usageEpisode, code: 'option-value' })),
];

test.each(cases)('$line is told to be wrong in Japanese', async ({ line, world, code }) => {
  const words = typeof line === 'string' ? line.split(' ') : line;
  const { status, error } = await run(world(), '--language', 'ja', ...words);
  const [, sentence = error, said] = /^誤り: (.*[。？])\n.*: ([a-z-]+)$/m.exec(error) ?? [];
  expect(said).toBe(code);
  expect(status).toBe(2);
  expect(englishIn(sentence, words.join(' ')), sentence).toEqual([]);
});
