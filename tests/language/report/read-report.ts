/** Texts to what is wrong with them, for the printers of diagnostics. */

import type { Diagnostic } from '../../../src/language/diagnostic.js';
import { parse } from '../../../src/language/parse.js';
import { human } from '../../../src/language/report/human-report.js';

export const FILE = 'c012.cut';

export const read = (text: string): { all: readonly Diagnostic[]; sources: Map<string, string> } => ({
  all: parse(FILE, text).diagnostics,
  sources: new Map([[FILE, text]]),
});

export const plain = (text: string): string => {
  const { all, sources } = read(text);
  return human(all, sources, { colour: false, language: 'en' });
};
