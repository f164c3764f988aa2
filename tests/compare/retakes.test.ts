/**
 * Whole retakes in retakes/*.txt: after some words of what it is, the parts `== old`, `== now`, `== note` and `== メモ`, and
 * `== manifest` where the episode matters.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { runOn } from '../command/run.js';

const FOLDER = 'tests/compare/retakes';

test.each(readdirSync(FOLDER))('%s', async (name) => {
  const [, ...pieces] = readFileSync(`${FOLDER}/${name}`, 'utf8').split(/^== (\S+)\n/m);
  const parts = new Map<string, string>();
  for (let i = 0; i < pieces.length; i += 2) parts.set(pieces[i]!, `${pieces[i + 1]!.trimEnd()}\n`);
  const files = {
    'old.cut': parts.get('old')!,
    'now.cut': parts.get('now')!,
    ...(parts.has('manifest') ? { 'episode.yaml': parts.get('manifest')! } : {}),
  };
  expect(await runOn(files, 'compare', 'old.cut', 'now.cut')).toEqual({
    status: 1,
    out: parts.get('note'),
    error: '',
  });
  expect((await runOn(files, 'compare', 'old.cut', 'now.cut', '--labels', 'ja')).out).toBe(parts.get('メモ'));
  expect(await runOn(files, 'compare', 'now.cut', 'now.cut')).toEqual({ status: 0, out: '', error: '' });
});
