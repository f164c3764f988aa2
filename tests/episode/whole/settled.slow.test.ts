/**
 * `build --changed` leaves cuts alone by the hash of their texts. Any number of edits later it has to say and write what it says and
 * writes when it may not look at that hash.
 */

import { expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../../src/host/memory-host.js';
import { run } from '../../command/run.js';
import { Dice } from './dice.js';
import { generateEpisode } from './generate.js';
import { worldOf, writesOf } from './world.js';

const TEXTS = /\+[\w-]{16} /g;

/** The same world, with the hashes of texts made wrong in all prints. */
function distrusting(host: MemoryHost): MemoryHost {
  const other = memoryHost();
  for (const [path, bytes] of host.files) {
    const pdf = path.endsWith('.pdf');
    const falsified = () =>
      Buffer.from(bytes)
        .toString('latin1')
        .replace(TEXTS, `+${'0'.repeat(16)} `);
    other.files.set(path, pdf ? Buffer.from(falsified(), 'latin1') : bytes);
  }
  return other;
}

/** Each gives a new text, or the old one where it has no use for it. `numbers`: of all cuts. */
const EDITS: readonly ((text: string, dice: Dice, numbers: readonly string[]) => string)[] = [
  (text) => `${text}# looked at\n`,
  (text, dice) =>
    text.replace(/^(A .*: 1:)(\d+)/m, (_, head, n) => `${head}${Number(n) + 1 + dice.below(2)}`),
  (text, dice) => `${text}note 1 "take ${dice.below(99)}"\n`,
  (text) => text.replace(/^overlap .*\n/m, ''),
  (text, dice) => text.replace(/^(overlap \w+) .*$/m, `$1 ${8 + dice.below(9)}`),
  (text, dice) => (/^overlap out/m.test(text) ? text : `${text}overlap out ${8 + dice.below(4)}\n`),
  (text, dice, numbers) => text.replace(/reuse \w+\//, `reuse ${dice.one(numbers)}/`),
  (text, dice, numbers) =>
    /reuse|^use/m.test(text) || /^level A\b/m.test(text)
      ? text
      : `${text}level A reuse ${dice.one(numbers)}/A\n`,
  (text) => text.replace(/^level \w+ reuse .*\n/m, ''),
  (text) => text.replace(/^A( .*)?: .*$/m, (line) => line.replace(/1--/, '1-')),
  (text) => text.replaceAll('\n', '\r\n'),
  (text) => text.replace('time ', 'tme '),
  (text) => text.replace('tme ', 'time '),
  (text, dice) => text.replace(/^(phrase \w+ = 1-*)/m, `$1${'-'.repeat(dice.below(2))}`),
  (text, dice) => text.replace(/^(artist|scene) .*$/m, `$1 ${dice.below(9)}`),
];

test.each([1, 2])('seed %i', { timeout: 600_000 }, async (seed) => {
  const dice = new Dice(seed);
  const { files, cuts } = generateEpisode({ cuts: 24, seed, meanFrames: 30 });
  const host = worldOf(files);
  await run(host, 'build', 'e', '-o', 'out');
  const numbers = cuts.map(({ number }) => number);
  const names = [...Object.keys(files).filter((name) => name.endsWith('.cut')), 'house.cut'];
  for (let round = 0; round < 30; round++) {
    for (let edits = 1 + dice.below(2); edits > 0; edits--) {
      const path = `/work/e/${dice.one(names)}`;
      const text = Buffer.from(host.files.get(path)!).toString();
      host.files.set(path, Buffer.from(dice.one(EDITS)(text, dice, numbers)));
    }
    const other = distrusting(host);
    const [written, wanted] = [writesOf(host), writesOf(other)];
    const [now, slow] = [
      await run(host, 'build', 'e', '-o', 'out', '--changed'),
      await run(other, 'build', 'e', '-o', 'out', '--changed'),
    ];
    expect(now, `round ${round}`).toEqual(slow);
    expect(written, `round ${round}`).toEqual(wanted);
  }
});
