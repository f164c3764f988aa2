/** Timelines in, rows out, for small tests. */

import type { Diagnostic } from '../../src/language/diagnostic.js';
import { messageOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';
import { bind } from '../../src/shot/bind-cut.js';
import { defaults, type Settings } from '../../src/shot/settings.js';
import { type SolveContext, solve } from '../../src/solve/solve-shot.js';
import type { SolvedLevel, SolvedShot } from '../../src/solve/solved-shot.js';

export interface Solved {
  readonly solved: SolvedShot;
  readonly diagnostics: readonly Diagnostic[];
  /** `error timeline-short`, in order of place. */
  readonly codes: readonly string[];
}

/** A whole text; throws where there is no time, so that no test passes by accident. */
export function solveText(text: string, given: SolveContext = {}, settings: Partial<Settings> = {}): Solved {
  const parsed = parse('this.cut', text);
  const bound = bind(parsed.tree, [], { ...defaults, ...settings });
  if (!bound.shot)
    throw new Error(`no shot: ${bound.diagnostics.map((each) => messageOf(each, 'en')).join(' ')}`);
  const solved = solve(bound.shot, given);
  const diagnostics = [...parsed.diagnostics, ...bound.diagnostics, ...solved.diagnostics].sort(
    (a, b) => a.span.start - b.span.start,
  );
  return { solved, diagnostics, codes: codesOf(diagnostics) };
}

const codesOf = (diagnostics: readonly Diagnostic[]): string[] =>
  diagnostics.map(({ severity, code }) => `${severity} ${code}`);

export interface Shown {
  /** `1*12 1.1*2 x*10`: what is seen for how many frames; a `'` behind the name: again, inside a cycle. */
  readonly runs: string;
  /** `1*12 2*2 -*10`: the same in finished numbers. */
  readonly cels: string;
  readonly level: SolvedLevel;
  readonly codes: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Level A of a cut of so many frames. `lines`: further statements. */
export function shown(frames: number, items: string, lines = '', given: SolveContext = {}): Shown {
  const text = `cut 1\ntime ${frames}\nA: ${items}\n${lines}\n`;
  const { solved, diagnostics: all } = solveText(text, given);
  // Sheets here are of few rows, and meant so.
  const diagnostics = all.filter(({ code }) => code !== 'time-in-frames');
  const codes = codesOf(diagnostics);
  const level = solved.levels.find((each) => each.name === 'A')!;
  return { runs: runs(level, 'drawing'), cels: runs(level, 'cel'), level, codes, diagnostics };
}

function runs(level: SolvedLevel, what: 'drawing' | 'cel'): string {
  const found: { name: string; frames: number }[] = [];
  for (const exposure of level.exposures) {
    const name = exposure[what] ?? 'x';
    if (exposure.starts)
      found.push({ name: `${name}${what === 'drawing' && exposure.again ? "'" : ''}`, frames: 1 });
    else found.at(-1)!.frames++;
  }
  return found.map(({ name, frames }) => `${name}*${frames}`).join(' ');
}
