/** `cutwright compare --output`: the retake note as a PDF. */

import { extname, resolve } from 'node:path';
import { CutPrinter } from '../build/cut-printer.js';
import { deliver, inputsOf, overwriting, STANDARD_OUTPUT, type Target } from '../build/output-targets.js';
import { printableLine } from '../build/printable-line.js';
import type { Reporter } from '../build/reporter.js';
import { type LaidOutNote, layOutNote, retakeDocument } from '../build/retake-document.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import type { Host } from '../host/host.js';
import type { PageLook } from '../sheet/page-look.js';
import { defaults, type Settings } from '../shot/settings.js';
import { type Comparison, type ComparisonSide, compareSides } from './comparison.js';

export interface PrintedNotesOrder {
  readonly output: string;
  readonly by: string;
  readonly reason: string;
  /** Overrules the episode. */
  readonly look: Partial<Pick<Settings, 'labels' | 'paper'>>;
}

const NOWHERE = { file: COMMAND_LINE, start: 0, end: 0 };

export class PrintedNotes {
  private constructor(
    private readonly host: Host,
    private readonly old: ComparisonSide,
    private readonly now: ComparisonSide,
    private readonly order: PrintedNotesOrder,
    private readonly target: Target,
  ) {}

  /** Throws UsageError where the file cannot be meant. */
  static open(host: Host, old: ComparisonSide, now: ComparisonSide, order: PrintedNotesOrder): PrintedNotes {
    const { output } = order;
    if (output === '-') return new PrintedNotes(host, old, now, order, STANDARD_OUTPUT);
    if (extname(output).toLowerCase() !== '.pdf')
      throw new UsageError('option-value', output, { variant: 'pdf-ending' });
    const path = resolve(host.cwd, output);
    const inputs = new Set([...inputsOf(host, now.found), ...inputsOf(host, old.found)]);
    const refused = overwriting(host, path, output, NOWHERE, (real) => inputs.has(real));
    if (refused) throw new UsageError(refused.code, output, refused.parameters);
    return new PrintedNotes(host, old, now, order, { path, name: output });
  }

  async compare(reporter: Reporter): Promise<Comparison<LaidOutNote>> {
    const { host, now, old, order, target } = this;
    const printer = CutPrinter.open(host);
    const folder = now.found.jobs[0]?.episode.folder ?? host.cwd;
    const look: PageLook = {
      settings: { ...(now.found.jobs[0]?.episode.settings ?? defaults), ...order.look },
      metrics: printer.fonts.metrics,
      stamp: host.commit(folder) ?? '',
    };
    const against = printableLine(old.label);
    const written = { against, askedBy: printableLine(order.by), reason: printableLine(order.reason) };
    const comparison = await compareSides(old, now, reporter, (was, is, changes) =>
      layOutNote(was, is, changes, written, look),
    );
    const { differing, onlyOld, onlyNow, restricted } = comparison;
    if (restricted !== null) return comparison;
    if (differing.length + onlyOld.length + onlyNow.length === 0) {
      reporter.say(reporter.words.noNote);
      return comparison;
    }
    const notes = { notes: differing, added: onlyNow, dropped: onlyOld, against };
    const document = retakeDocument(notes, look);
    const fault = deliver(host, target, await printer.print(document), NOWHERE);
    if (fault) throw new UsageError(fault.code, target.name, fault.parameters);
    if (target.path !== null)
      reporter.say(reporter.words.wrote(target.name, reporter.words.pages(document.pages.length)));
    return comparison;
  }
}
