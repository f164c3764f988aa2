/**
 * The numbers of a shot are the same to the last digit whatever runs the program, so that exports can be compared byte for byte.
 * ECMAScript leaves the last digits of many functions of Math, and of `**`, to the engine.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const SOURCES = new URL('../../src/solve/', import.meta.url);

/** What IEEE 754 or ECMAScript defines to the last bit. */
const EXACT = ['abs', 'ceil', 'floor', 'max', 'min', 'round', 'sign', 'sqrt', 'trunc', 'PI', 'LN2', 'SQRT2'];
/** What the engine may choose. Measured: 200,000 values of each are the same bits on Node 20.20, 22.23 and 24.21. */
const MEASURED = ['cos', 'hypot', 'sin'];

test('nothing that engines compute differently', () => {
  const found: string[] = [];
  for (const name of readdirSync(SOURCES, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.ts')) continue;
    const code = codeOf(readFileSync(fileURLToPath(new URL(name, SOURCES)), 'utf8'));
    for (const [used, member] of code.matchAll(/\bMath(?:\.(\w+))?|\*\*/g))
      if (!member || ![...EXACT, ...MEASURED].includes(member)) found.push(`${name}: ${used}`);
  }
  expect(found).toEqual([]);
});

test('the search sees what it is for', () => {
  expect(codeOf('/** a ** b */\nx = a ** 2; // Math.pow(a)\ny')).toBe('\nx = a ** 2; \ny');
});

/** Without comments. */
function codeOf(source: string): string {
  return source.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
}
