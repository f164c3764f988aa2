/** In-between charts as typed → their form; how many in-betweens they must fit is the solver's to check. */

import type { Report, Span } from '../language/diagnostic.js';
import { diagnose } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import type { Chart as TreeChart } from '../language/tree.js';
import type { Chart } from './shot.js';

const NAMED = ['even', 'early', 'late', 'both'] as const;

/** Null after a report. */
export function bindChart(chart: TreeChart, report: Report): (Chart & { readonly span: Span }) | null {
  if (chart.form === 'named') {
    const form = NAMED.find((each) => each === chart.name);
    if (form) return { form, span: chart.span };
    const guess = nearest(chart.name, NAMED);
    report(
      diagnose(
        'unknown-chart',
        chart.span,
        `There is no chart \`${chart.name}\`; ${guess ? `did you mean \`${guess}\`?` : 'it is one of `even`, `early`, `late`, `both`, or fractions.'}`,
        guess
          ? { fix: { title: `write \`${guess}\``, edits: [{ span: chart.span, text: `{${guess}}` }] } }
          : {},
      ),
    );
    return null;
  }
  let before = 0;
  for (const { value, span } of chart.fractions) {
    if (!(value > 0 && value < 1)) {
      report(
        diagnose(
          'chart-outside',
          span,
          'A fraction of a chart lies between 0, the first key, and 1, the second one.',
        ),
      );
      return null;
    }
    if (value <= before) {
      report(
        diagnose(
          'chart-not-rising',
          span,
          'The fractions of a chart rise from the first key to the second one.',
        ),
      );
      return null;
    }
    before = value;
  }
  return { form: 'fractions', fractions: chart.fractions.map((each) => each.value), span: chart.span };
}
