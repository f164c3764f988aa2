/**
 * Golden cuts: text in, numbers and pages out. This test only compares; with ACCEPT=1 (`npm run accept`) it writes what is
 * there now and leaves the old pages beside the new ones in out/accept.
 */

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import type { Compiled } from '../../src/episode/compile-cut.js';
import { toJson } from '../../src/export/cut-json.js';
import type { Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { chartPages } from '../../src/sheet/inbetween-chart-pages.js';
import { compileFiles, said } from '../compile.js';
import { testFonts } from '../fonts.js';
import { type Change, review } from './accept.js';
import { dump } from './dump.js';

const ROOT = 'tests/cuts';
const REVIEW = 'out/accept';
const accepting = process.env.ACCEPT === '1' && !process.env.CI;

const changes: Change[] = [];
const compiled = await compileFiles(`${ROOT}/japan`, `${ROOT}/japanese`, `${ROOT}/west`);

afterAll(async () => {
  if (!accepting) return;
  await review(REVIEW, changes, testFonts());
  process.stdout.write(`${changes.length} changed; look at ${REVIEW}/index.html\n`);
});

describe.each([...compiled])('%s', (file, cut) => {
  const base = file.replace(/\.cut$/, '');
  const name = base.slice(ROOT.length + 1);

  test('has no fault', () => {
    expect(said(cut.diagnostics).filter((one) => !one.startsWith('hint'))).toEqual([]);
  });

  test('has the numbers that were accepted', () => {
    const made = tidy(toJson(cut.solved!, cut.diagnostics, cut.sources));
    if (accepting) writeFileSync(`${base}.export`, made);
    expect(made).toBe(readFileSync(`${base}.export`, 'utf8'));
  });

  test('has the pages that were accepted', () => {
    const pages = pagesOf(cut);
    const made = dump(pages);
    if (accepting) {
      const old = existsSync(`${base}.page`) ? readFileSync(`${base}.page`, 'utf8') : null;
      if (old !== made) changes.push({ name, old, pages });
      writeFileSync(`${base}.page`, made);
    }
    const accepted = readFileSync(`${base}.page`, 'utf8').split('\n');
    expect(made.split('\n').filter((one, index) => one !== accepted[index])).toEqual([]);
    expect(made.split('\n')).toHaveLength(accepted.length);
  });
});

function pagesOf(cut: Compiled): Page[] {
  const look = { settings: cut.solved!.shot.settings, metrics: testFonts().metrics, stamp: cut.digest };
  return [...sheetPages(cut.solved!, look), ...chartPages(cut.solved!, look)];
}

/** JSON with the innermost objects on a line each: one exposure, one line. */
function tidy(value: unknown): string {
  const text = JSON.stringify(value, null, 1);
  return `${text.replace(/[[{]\n[^[\]{}]*[\]}]/g, (inner) => inner.replace(/\n\s*/g, ' '))}\n`;
}
