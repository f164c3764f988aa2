/** `accept CODE "reason"`. */

import { expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { runOn } from '../command/run.js';
import { compileText } from '../compile.js';

const codes = (text: string, files: Readonly<Record<string, string>> = {}): string[] =>
  compileText(text, files).diagnostics.map(({ code, severity }) => `${severity} ${code}`);

/** A hint, and a warning. */
const CUT = 'cut 1\ntime 1+0\nmark hit 9\nstack BG A C\nlevel C flash\nA: 1..\nC: (1:2 x:4)..\n';
const FLASHES = 'accept flashes "seen at the test"\n';

test('a warning or a hint that is accepted is not told, the others are', () => {
  expect(codes(CUT)).toEqual(['hint mark-unused', 'warning flashes']);
  expect(codes(`${CUT}${FLASHES}`)).toEqual(['hint mark-unused']);
  expect(codes(`${FLASHES}${CUT}accept mark-unused "for the sound"\n`)).toEqual([]);
});

test('every one of its code is silenced, in a used file as well', () => {
  const files = { 'house.cut': 'phrase p = 1--2\n' };
  const marks = 'mark hit 9\nmark again 10\n';
  expect(codes(`cut 1\ntime 1+0\n${marks}A: 1..\n`)).toEqual(['hint mark-unused', 'hint mark-unused']);
  expect(codes(`cut 1\ntime 1+0\n${marks}A: 1..\naccept mark-unused "later"\n`, files)).toEqual([]);
});

test('what silences nothing is a hint, which is mended by taking it out and can be accepted itself', () => {
  const idle = 'cut 1\ntime 1+0\nA: 1..\naccept strobing "looks right"\n';
  const [hint, ...more] = compileText(idle).diagnostics;
  expect(more).toEqual([]);
  expect(messageOf(hint!, 'en')).toBe('This cut gives no `strobing`, so there is nothing to accept.');
  const { span, text } = hint!.fix!.edits[0]!;
  expect(codes(idle.slice(0, span.start) + text + idle.slice(span.end))).toEqual([]);
  expect(codes(`${idle}accept accept-unused "comes back with take 2"\n`)).toEqual([]);
  expect(codes('cut 1\ntime 1+0\nA: 1..\naccept accept-unused "why not"\n')).toEqual(['hint accept-unused']);
});

test('beside an error nobody is told to take it out: the warning may come back', () => {
  expect(codes('cut 1\ntime 1+0\nA: 1 -\naccept strobing "looks right"\n')).not.toContain(
    'hint accept-unused',
  );
});

test('an error cannot be accepted, and stays', () => {
  expect(codes('cut 1\ntime 1+0\nA: 1--2\naccept timeline-short "enough"\n')).toEqual([
    'error timeline-short',
    'error accept-error',
  ]);
});

test('a code that is none gets a guess, and is replaced by it', () => {
  const [unknown] = compileText('cut 1\ntime 1+0\nA: 1..\naccept strobin "looks right"\n').diagnostics;
  expect(messageOf(unknown!, 'en')).toBe('There is no message `strobin`; did you mean `strobing`?');
  expect(unknown!.fix?.edits[0]?.text).toBe('strobing');
  const [none] = compileText('cut 1\ntime 1+0\nA: 1..\naccept toString "x"\n').diagnostics;
  expect([none!.code, none!.fix]).toEqual(['accept-unknown', undefined]);
});

test.each([
  ['accept flashes', 'missing-word'],
  ['accept "why"', 'missing-word'],
  ['accept mark - unused "why"', 'unexpected'],
])('%s is not read', (line) => {
  const { diagnostics, tree } = compileText(`cut 1\ntime 1+0\nA: 1..\n${line}\n`);
  expect(diagnostics.some(({ severity }) => severity === 'error')).toBe(true);
  expect(tree!.broken.map(({ word }) => word)).toEqual(['accept']);
});

test('twice is once too often', () => {
  expect(codes(`${CUT}${FLASHES}${FLASHES}`)).toContain('error statement-twice');
});

test('full-width letters and hyphens are read as the plain ones', () => {
  expect(codes(`${CUT}ａｃｃｅｐｔ　ｍａｒｋ－ｕｎｕｓｅｄ　「後で」\n`)).toEqual(['warning flashes']);
});

test('the reason is in no print and needs no letter of the font', async () => {
  expect(codes(`${CUT}${FLASHES}accept mark-unused "\u{1F600}"\n`)).toEqual([]);
  const { out } = await runOn({ '1.cut': `${CUT}${FLASHES}` }, 'show', '1.cut');
  expect(out).not.toContain('seen at');
});

test('--strict does not count what is accepted', async () => {
  const hint = 'accept mark-unused "later"\n';
  expect((await runOn({ '1.cut': `${CUT}${hint}` }, 'check', '--strict', '1.cut')).status).toBe(1);
  expect((await runOn({ '1.cut': `${CUT}${hint}${FLASHES}` }, 'check', '--strict', '1.cut')).status).toBe(0);
});

test('is formatted with its code in one piece', async () => {
  const { out } = await runOn(
    { '1.cut': 'cut 1\ntime 1+0\nA: 1..\naccept   mark-unused   "later"\n' },
    'format',
    '--diff',
    '1.cut',
  );
  expect(out).toContain('+accept mark-unused "later"\n');
});
