/** What the two codes for wrong use say, by the command line that is wrong. */

import { afterEach, expect, test, vi } from 'vitest';
import type { MemoryHost } from '../../../../src/host/memory-host.js';
import { en } from '../../../../src/language/catalogue/en/index.js';
import { run } from '../../../command/run.js';
import { IN_EPISODE, OPTION_VALUES, usageEpisode, usageWorld, WRONG_ARGUMENTS } from '../usage-lines.js';

/** Said only at a terminal, and of faults that the library finds and we do not name. */
const NOT_HERE = ['lsp-terminal', 'library'];

afterEach(() => {
  vi.restoreAllMocks();
});

test.each([
  ['option-value', OPTION_VALUES, IN_EPISODE],
  ['wrong-arguments', WRONG_ARGUMENTS, []],
] as const)('%s says each of its sentences to one of these lines', async (code, lines, inEpisode) => {
  const texts = en.codes[code].message as unknown as Record<string, () => string>;
  const spies = Object.keys(texts).map((variant) => vi.spyOn(texts, variant));
  const said = async (host: MemoryHost, line: string | readonly string[]) => {
    const { status, error } = await run(host, ...(typeof line === 'string' ? line.split(' ') : line));
    const [, sentence, saidCode] = /^Error: (.*)\n.*: ([a-z-]+)$/m.exec(error) ?? [];
    return [line, `${status} ${saidCode}: ${sentence ?? error}`];
  };
  const expected = [...lines, ...inEpisode].map(([line, sentence]) => [line, `2 ${code}: ${sentence}`]);
  const got = [];
  for (const [line] of lines) got.push(await said(usageWorld(), line));
  for (const [line] of inEpisode) got.push(await said(usageEpisode(), line));
  expect(got).toEqual(expected);
  const unsaid = spies.filter(({ mock }) => mock.calls.length === 0).map((spy) => spy.getMockName());
  expect(unsaid.filter((variant) => !NOT_HERE.includes(variant))).toEqual([]);
});
