import { expect, test } from 'vitest';
import { fixedAsTyped } from '../../src/episode/fixes-as-typed.js';
import type { Diagnostic, Fix } from '../../src/language/diagnostic.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { compileText } from '../compile.js';

const applied = (text: string, fix: Fix | undefined): string | null =>
  fix
    ? withEdits(
        text,
        fix.edits.map(({ span, text }) => ({ ...span, text })),
      )
    : null;

/** The text after the mend of the diagnostic with this code. */
function mended(text: string, code: string): string | null {
  return applied(text, compileText(text).diagnostics.find((one) => one.code === code)?.fix);
}

const PAN = 'cut 1\ntime 1+0\nA: 1..\nlevel A free\n';

test.each([
  ['2in,0', '0.5in 0.5in', '1in,0in'],
  ['5cm,0', '2cm 2cm', '4cm,0cm'],
  ['50,0', '20mm 20mm', '40,0'],
  ['50mm,0', '20 20', '40mm,0mm'],
])('a field at %s whose graduations end elsewhere is put there in its own unit', (at, steps, place) => {
  const text = `${PAN}field C full at ${at}\npan full@1 > C@3 steps ${steps}\n`;
  expect(mended(text, 'steps-sum')).toBe(text.replace(at, place));
});

test('the width of a field that a truck goes to is given in its own unit', () => {
  const text = `${PAN}field C 8in\ntruck full@1 > C@3 steps 0.5in 0.5in\n`;
  const found = mended(text, 'steps-sum');
  expect(found).toMatch(/field C [\d.]+in\n/);
  expect(compileText(found!).diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
});

test('no field is offered where the graduations are too few for the steps', () => {
  const text = `${PAN}field C full at 50,0\npan full@1 > C@9 steps 20 20\n`;
  expect(compileText(text).diagnostics.map(({ code }) => code)).toContain('steps-count');
  expect(mended(text, 'steps-sum')).toBeNull();
});

test('what a second line says of a level goes to the first', () => {
  const text = 'cut 1\ntime 1+0\nlevel A free # by hand\nA: 1..\nB: 1..\nlevel A with B\nmemo "x"\n';
  expect(mended(text, 'statement-twice')).toBe(
    'cut 1\ntime 1+0\nlevel A free with B # by hand\nA: 1..\nB: 1..\nmemo "x"\n',
  );
});

test('lines that say the same twice, or other statements, are not joined', () => {
  expect(mended('cut 1\ntime 1+0\nlevel A free\nlevel A free\nA: 1..\n', 'statement-twice')).toBeNull();
  expect(mended('cut 1\ntime 1+0\nscene 1\nscene 2\nA: 1..\n', 'statement-twice')).toBeNull();
});

test('what stands in another file is left alone', () => {
  const { diagnostics } = compileText('cut 1\ntime 1+0\nlevel A free\nA: 1..\nlevel A carry\n');
  const { fix: _, ...bare } = diagnostics.find(({ code }) => code === 'statement-twice') as Diagnostic;
  expect(fixedAsTyped(bare, 'other.cut', '')).toBe(bare);
});
