/**
 * Tries texts until the time is up: check, format, export, the sheet in the terminal and the comparison of each, pages and PDF of
 * every tenth. Counts what it tried; an exception is a crash, and its text is printed. `fuzz(['--seconds', '60', '--seed', '7'])`.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomOf, TEXT_KINDS, textOf } from './texts.js';
import { hasErrors, printed, throughAll } from './ways.js';

/** A crash for each way in which it fails; more are only counted. */
const MOST_SHOWN = 10;

export async function fuzz(argv: readonly string[]): Promise<number> {
  const option = (name: string, otherwise: number): number => {
    const at = argv.indexOf(`--${name}`);
    const value = at < 0 ? otherwise : Number(argv[at + 1]);
    if (!Number.isInteger(value) || value < 0) throw new Error(`--${name} takes a whole number`);
    return value;
  };
  const seconds = option('seconds', 60);
  const seed = option('seed', 1);
  const random = randomOf(seed);
  const cuts = cutsIn('examples');
  const counts = { texts: 0, unread: 0, errors: 0, clean: 0, printed: 0 };
  const crashes = new Map<string, string>();
  let failed = 0;
  const end = Date.now() + seconds * 1000;
  while (Date.now() < end) {
    const kind = TEXT_KINDS[counts.texts % TEXT_KINDS.length]!;
    const text = textOf(random, kind, cuts);
    counts.texts += 1;
    try {
      const cut = throughAll(text);
      if (!cut.solved) counts.unread += 1;
      else if (hasErrors(cut)) counts.errors += 1;
      else {
        counts.clean += 1;
        if (random() < 0.1) {
          await printed(cut);
          counts.printed += 1;
        }
      }
    } catch (fault) {
      failed += 1;
      const trace = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
      const where = trace.split('\n').slice(0, 3).join('\n');
      if (!crashes.has(where)) crashes.set(where, text);
    }
  }
  for (const [where, text] of [...crashes].slice(0, MOST_SHOWN))
    process.stderr.write(`crash: ${where}\n  ${JSON.stringify(text)}\n`);
  const { texts, unread, errors, clean } = counts;
  process.stdout.write(
    `seed ${seed}: ${texts} texts, ${unread} unsolved, ${errors} with errors, ${clean} clean, ${counts.printed} printed, ${failed} crashes\n`,
  );
  // A run that tried nothing proves nothing.
  return failed === 0 && texts > 0 ? 0 : 1;
}

function cutsIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.cut'))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8'));
}
