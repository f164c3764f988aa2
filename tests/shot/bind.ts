/** Text → shot, for small tests. */

import type { Diagnostic } from '../../src/language/diagnostic.js';
import { parse } from '../../src/language/parse.js';
import { bind } from '../../src/shot/bind-cut.js';
import { defaults, type Settings } from '../../src/shot/settings.js';
import type { Shot } from '../../src/shot/shot.js';

export interface BoundText {
  readonly shot: Shot | null;
  /** Those of the binder alone. */
  readonly diagnostics: readonly Diagnostic[];
  readonly codes: readonly string[];
}

/** `used`: texts of used files. */
export function bindText(
  text: string,
  used: readonly string[] = [],
  settings: Partial<Settings> = {},
): BoundText {
  const trees = used.map((each, i) => parse(`used${i}.cut`, each).tree);
  const { shot, diagnostics } = bind(parse('this.cut', text).tree, trees, { ...defaults, ...settings });
  return { shot, diagnostics, codes: diagnostics.map((each) => `${each.severity} ${each.code}`) };
}

/** A cut of five seconds with one held level and these lines. */
export function withLines(...lines: readonly string[]): BoundText {
  return bindText(`cut 1\ntime 5+0\nA: 1..\n${lines.join('\n')}\n`);
}
