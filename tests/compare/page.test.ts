/** What grammar/comparing.md says: its commands give what it shows, and its table has every kind. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { wordsOf } from '../../src/words/words.js';
import { runOn } from '../command/run.js';

const page = readFileSync('grammar/comparing.md', 'utf8');
const files = Object.fromEntries(
  [...page.matchAll(/^```cut file=(\S+)\n([\s\S]*?)^```$/gm)].map(([, name, text]) => [name!, text!]),
);
const consoles = [...page.matchAll(/^```console\n\$ cutwright (.*)\n([\s\S]*?)^```$/gm)].map(
  ([, line, out]) => ({
    line: line!,
    out: out!,
  }),
);

test.each(consoles)('$line', async ({ line, out }) => {
  expect(await runOn(files, ...line.split(' '))).toEqual({ status: 1, out, error: '' });
});

test('both examples are there', () => {
  expect(consoles.length).toBe(2);
});

test('the table of kinds has all of them, and no other', () => {
  const table = page.slice(page.indexOf('| `kind` | says |'));
  const named = [...table.matchAll(/^\| ((?:`[\w-]+` ?)+)\|/gm)].flatMap(
    ([, cell]) => cell!.match(/[\w-]+/g)!,
  );
  expect(named.filter((one) => one !== 'kind').sort()).toEqual(
    Object.keys(wordsOf({ labels: 'en', convention: 'japan' }).changes).sort(),
  );
});
