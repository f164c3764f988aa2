import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { defaults, type Settings } from '../../src/shot/settings.js';
import { compileFiles } from '../compile.js';
import { caseOf, DISSOLVES, MANY_LEVELS, picker, RICH, somewhatMarked } from './cuts.js';
import { type Case, faults, layOut, printAndOpen } from './print.js';

const LOOKS: readonly Partial<Settings>[] = [
  { convention: 'japan', labels: 'ja', paper: 'B4' },
  { convention: 'japan', labels: 'en', paper: 'A3' },
  { convention: 'west', labels: 'en', paper: 'legal' },
  { convention: 'west', labels: 'ja', paper: 'A4' },
];

function fail(name: string): never {
  throw new Error(`${name} was not solved`);
}

async function faultsOf(cases: readonly Case[]): Promise<Record<string, string[]>> {
  const laid = cases.map((one) => layOut(one));
  const papers = await printAndOpen(laid);
  const found = laid.map((one, i) => [one.name, faults(one, papers[i]!)] as const);
  return Object.fromEntries(found.filter(([, wrong]) => wrong.length > 0));
}

describe.each(LOOKS)('read back from paper, $convention, labels $labels, $paper', (look) => {
  test('every example says what the solver says', async () => {
    const cuts = await compileFiles(...readdirSync('examples').map((name) => `examples/${name}`));
    expect(cuts.size).toBeGreaterThan(8);
    const cases = [...cuts].map(([name, { solved }]) => ({
      name,
      solved: solved ?? fail(name),
      settings: { ...defaults, ...look },
    }));
    expect(await faultsOf(cases)).toEqual({});
  });

  test('so do a cut with everything in it and one with 26 levels', async () => {
    const many = caseOf('26 levels', MANY_LEVELS, look);
    expect(layOut(many, false).pages.map((page) => page.label)).toContain('1-b');
    const cases = [caseOf('everything', RICH, look), caseOf('dissolves', DISSOLVES, look), many];
    expect(await faultsOf(cases)).toEqual({});
    const marked = cases.map((one, i) => ({ ...one, marked: somewhatMarked(one, picker(i)) }));
    expect(await faultsOf(marked)).toEqual({});
  });
});
