/** In-between charts as typed → their form; how many in-betweens they must fit is the solver's to check. */

import type { Report, Span } from '../language/diagnostic.js';
import { diagnose } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { Chart as TreeChart } from '../language/tree.js';
import type { ShotChart } from './shot.js';

const NAMED = ['even', 'early', 'late', 'both'] as const;

/** Null after a report. */
export function bindChart(chart: TreeChart, report: Report): (ShotChart & { readonly span: Span }) | null {
  if (chart.form === 'named') {
    const form = NAMED.find((each) => each === chart.name);
    if (form) return { form, span: chart.span };
    const guess = nearest(chart.name, NAMED);
    report(
      diagnose(
        'unknown-chart',
        chart.span,
        { name: chart.name, guess: guess ?? null },
        guess
          ? { fix: { action: 'write', written: guess, edits: [{ span: chart.span, text: `{${guess}}` }] } }
          : {},
      ),
    );
    return null;
  }
  let before = 0;
  for (const { value, span } of chart.fractions) {
    if (!(value > 0 && value < 1)) {
      report(diagnose('chart-outside', span, {}));
      return null;
    }
    if (value <= before) {
      report(diagnose('chart-not-rising', span, {}));
      return null;
    }
    before = value;
  }
  return { form: 'fractions', fractions: chart.fractions.map((each) => each.value), span: chart.span };
}
