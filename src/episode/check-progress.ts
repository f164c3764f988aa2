/** Holds the rows of `progress.csv` and the due days of the manifest against the cuts of an episode. */

import { cutStanding, type StageFinding, type StageRow } from '../count/stage-states.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import { cutKey, type Episode } from './episode.js';

/** `cuts`: their numbers as written; null: some number cannot be read, so nobody knows which cuts there are. */
export function checkProgress(
  { production, dueCuts }: Pick<Episode, 'production' | 'dueCuts'>,
  rows: readonly StageRow[],
  cuts: readonly string[] | null,
): Diagnostic[] {
  const known = cuts === null ? null : new Set(cuts.map(cutKey));
  const guess = (cut: string): string | null => nearest(cut, cuts ?? []) ?? null;
  const byCut = new Map<string, StageRow[]>();
  const diagnostics: Diagnostic[] = [];
  for (const row of rows) {
    byCut.set(row.key, [...(byCut.get(row.key) ?? []), row]);
    if (known && !known.has(row.key))
      diagnostics.push(
        diagnose('progress-cut', row.places.cut, { inRow: true, cut: row.cut, guess: guess(row.cut) }),
      );
  }
  for (const { text, span } of dueCuts) {
    if (known && !known.has(cutKey(text)))
      diagnostics.push(diagnose('progress-cut', span, { inRow: false, cut: text, guess: guess(text) }));
  }
  for (const own of byCut.values())
    diagnostics.push(...cutStanding(own, production.stages).findings.map(findingDiagnostic));
  return diagnostics.sort((a, b) => a.span.start - b.span.start);
}

export function findingDiagnostic(finding: StageFinding): Diagnostic {
  const { row } = finding;
  const { cut, stage, places } = row;
  switch (finding.kind) {
    case 'retake-open':
      return diagnose('progress-order', places.state, { variant: 'retake-open', cut, stage });
    case 'early':
      return diagnose('progress-order', places.stage, {
        ...{ variant: 'early', cut, stage },
        date: row.date,
        missing: finding.missing,
      });
    default: {
      const { before } = finding;
      const state = finding.kind === 'done-twice' ? 'done' : 'started';
      const { date, person } = before;
      return diagnose(
        'progress-twice',
        places.stage,
        { state, cut, stage, date, person },
        { notes: [{ note: 'stands-first-here', span: before.places.stage }] },
      );
    }
  }
}
