import { expect, test } from 'vitest';
import {
  type Diagnostic,
  diagnose,
  diagnosticKey,
  guessFix,
  hasErrors,
  reportOnce,
} from '../../src/language/diagnostic.js';

const span = { file: 'this.cut', start: 3, end: 5 };
const error = diagnose('time-zero', span, {});
const warning = diagnose('level-empty', span, { level: 'A' });
const hint = diagnose('mark-unused', span, { mark: 'hit' });

test('the severity of a code is that of the catalogue', () => {
  expect([error, warning, hint].map(({ severity }) => severity)).toEqual(['error', 'warning', 'hint']);
});

test('without notes and fix it has none', () => {
  expect(error).toEqual({ code: 'time-zero', severity: 'error', span, parameters: {}, notes: [] });
  expect('fix' in diagnose('time-zero', span, {}, { fix: undefined })).toBe(false);
});

test('errors keep a cut from printing; warnings do where they count', () => {
  expect(hasErrors([hint, warning])).toBe(false);
  expect(hasErrors([hint, error])).toBe(true);
  expect(hasErrors([hint, warning], true)).toBe(true);
  expect(hasErrors([hint], true)).toBe(false);
  expect(hasErrors([], true)).toBe(false);
});

test('two of one code are one where place and parameters agree', () => {
  const key = (...of: Parameters<typeof diagnose<'level-empty'>>) => diagnosticKey(diagnose(...of));
  expect(key('level-empty', { ...span }, { level: 'A' })).toBe(diagnosticKey(warning));
  expect(key('level-empty', { ...span, end: 6 }, { level: 'A' })).not.toBe(diagnosticKey(warning));
  expect(key('level-empty', { ...span, file: 'b.cut' }, { level: 'A' })).not.toBe(diagnosticKey(warning));
  expect(key('level-empty', span, { level: 'B' })).not.toBe(diagnosticKey(warning));
});

test('of one code at one place only the first is kept', () => {
  const kept: Diagnostic[] = [];
  const report = reportOnce(kept);
  const elsewhere = diagnose('time-zero', { ...span, start: 4 }, {});
  for (const one of [error, warning, diagnose('level-empty', span, { level: 'B' }), elsewhere, error])
    report(one);
  expect(kept).toEqual([error, warning, elsewhere]);
});

test('a guess is offered as it is written there, and nothing where there is none', () => {
  const action = { action: 'write', written: 'late' };
  expect(guessFix('late', span)).toEqual({ fix: { ...action, edits: [{ span, text: 'late' }] } });
  expect(guessFix('late', span, '{late}')).toEqual({ fix: { ...action, edits: [{ span, text: '{late}' }] } });
  expect(guessFix(undefined, span)).toEqual({});
});
