/** Shows what a run says on standard error: for people, as JSON, or as annotations of a pull request. */

import { isWrongUse, type Reporter } from '../build/reporter.js';
import type { Host } from '../host/host.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import { type Diagnostic, diagnosticKey } from '../language/diagnostic.js';
import { runTexts } from '../language/message.js';
import { human } from '../language/report/human-report.js';
import { github, json } from '../language/report/machine-reports.js';
import { type UserLanguage, userLanguage } from '../language/user-language.js';

export const FORMATS = ['human', 'json', 'github'] as const;
export type Format = (typeof FORMATS)[number];

export class ConsoleReporter implements Reporter {
  private readonly seen = new Set<string>();
  private readonly kept: Diagnostic[] = [];
  private readonly sources = new Map<string, string>();
  private readonly count = { error: 0, warning: 0, hint: 0 };
  private status = 0;
  readonly language: UserLanguage;
  readonly words: RunTexts;

  constructor(
    private readonly host: Host,
    private readonly format: Format,
    private readonly strict: boolean,
  ) {
    this.language = userLanguage(host);
    this.words = runTexts(this.language);
  }

  /** Takes what a stage found; what a run has said already is not said again. */
  report(diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>): void {
    const fresh = diagnostics.filter((one) => {
      const key = diagnosticKey(one);
      return !this.seen.has(key) && this.seen.add(key);
    });
    for (const { code, severity } of fresh) {
      this.count[severity] += 1;
      if (severity === 'error' || (this.strict && severity === 'warning')) {
        this.status = Math.max(this.status, isWrongUse(code) ? 2 : 1);
      }
    }
    if (fresh.length === 0) return;
    if (this.format === 'json') {
      // One document for the whole run: kept until its end, with the texts that it points into.
      this.kept.push(...fresh);
      for (const span of fresh.flatMap(spansOf)) {
        const text = sources.get(span);
        if (text !== undefined) this.sources.set(span, text);
      }
    } else if (this.format === 'github') this.host.error(github(fresh, sources, this.language));
    else this.host.error(human(fresh, sources, { colour: this.colour, language: this.language }));
  }

  /** A line for people; a program that reads JSON gets none. */
  say(line: string): void {
    if (this.format !== 'json') this.host.error(`${line}\n`);
  }

  /** "1 error, 2 warnings", or "nothing wrong". */
  tally(): string {
    const { error, warning, hint } = this.count;
    return this.words.tally(error, warning, hint);
  }

  /** Prints what was kept; the exit status of the run. */
  finish(): number {
    if (this.format === 'json') this.host.error(json(this.kept, this.sources));
    return this.status;
  }

  private get colour(): boolean {
    return this.host.colour && !this.host.env('NO_COLOR');
  }
}

function spansOf({ span, notes, fix }: Diagnostic): string[] {
  const files = [span.file];
  for (const note of notes) if (note.span) files.push(note.span.file);
  for (const edit of fix?.edits ?? []) files.push(edit.span.file);
  return files;
}
