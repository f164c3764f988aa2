import { expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { dictionaryOf } from '../../src/episode/english-words.js';
import { noEpisode } from '../../src/episode/episode.js';
import { memoryHost } from '../../src/host/memory-host.js';

/** How often the dictionary is read where a cut is compiled twice. */
function loads(text: string): number {
  let read = 0;
  const host = {
    ...memoryHost({ 'c.cut': `cut 1\ntime 2+0\nA: 1..\n${text}\n` }),
    englishWords: () => {
      read++;
      return { ok: true as const, value: '\nwait W EY1 T\n' };
    },
  };
  for (let i = 0; i < 2; i++) compile(host, '/work/c.cut', noEpisode, { name: 'c.cut' });
  return read;
}

test('the dictionary is read once, and only for English that a mouth speaks or that may be too fast', () => {
  const slow = 'voice "Nao" 1..40 "Wait for me!"';
  expect(loads(slow)).toBe(0);
  expect(loads('mouth B "Nao" 1 2 3\nvoice "Nao" 1..40 "待《ま》って！"')).toBe(0);
  expect(loads(`mouth B "Nao" 1 2 3\n${slow}`)).toBe(1);
  expect(loads(slow.replace('40', '6'))).toBe(1);
});

test('where it cannot be read, no word is known', () => {
  expect(dictionaryOf({ englishWords: () => ({ ok: false, reason: 'gone' }) })('wait')).toBeNull();
});
