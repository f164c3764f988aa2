/**
 * Tests mirror the sources: src/solve/unroll-cycles.ts has tests/solve/unroll-cycles.test.ts. Those that have none yet, and are covered by the tests
 * of larger parts only, stand in without-twin.txt.
 */

import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.d.ts'))
  .sort();

const twinsOf = (source: string): string[] =>
  ['.test.ts', '.slow.test.ts'].map((end) => `tests/${source.replace(/\.ts$/, end)}`);

/** Whether a source decides anything: it has a condition or a loop. */
function hasLogic(source: string): boolean {
  const text = readFileSync(`src/${source}`, 'utf8');
  const file = ts.createSourceFile(source, text, ts.ScriptTarget.ES2022);
  let found = false;
  const visit = (node: ts.Node): void => {
    found ||=
      ts.isIfStatement(node) ||
      ts.isConditionalExpression(node) ||
      ts.isIterationStatement(node, false) ||
      ts.isSwitchStatement(node) ||
      (ts.isBinaryExpression(node) &&
        [
          ts.SyntaxKind.AmpersandAmpersandToken,
          ts.SyntaxKind.BarBarToken,
          ts.SyntaxKind.QuestionQuestionToken,
        ].includes(node.operatorToken.kind));
    if (!found) ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

const without = sources.filter((source) => hasLogic(source) && !twinsOf(source).some(existsSync));
const LIST = 'tests/without-twin.txt';

// UPDATE=1 writes the list anew: after a source was renamed, or when a test was written. It is to grow shorter.
if (process.env.UPDATE) writeFileSync(LIST, without.map((source) => `${source}\n`).join(''));
const listed = readFileSync(LIST, 'utf8').trim().split('\n');

test('a source with logic has a test of its own, or stands in the list of those that wait for one', () => {
  expect(without.filter((source) => !listed.includes(source))).toEqual([]);
});

test('what has a test, has no logic, or is gone, is taken out of the list', () => {
  expect(listed.filter((source) => !without.includes(source))).toEqual([]);
});

test('sources with and without logic are told apart', () => {
  expect(hasLogic('solve/unroll-cycles.ts')).toBe(true);
  expect(hasLogic('print/inks.ts')).toBe(false);
});
