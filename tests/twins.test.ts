/** Tests mirror the sources: src/solve/unroll-cycles.ts has tests/solve/unroll-cycles.test.ts. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
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

test('a source with logic has a test of its own', () => {
  expect(without).toEqual([]);
});

test('sources with and without logic are told apart', () => {
  expect(hasLogic('solve/unroll-cycles.ts')).toBe(true);
  expect(hasLogic('print/inks.ts')).toBe(false);
});
