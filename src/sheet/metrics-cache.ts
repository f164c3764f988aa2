import type { Metrics, Weight } from './display-list.js';

/** How many widths are kept before starting again; a cut has some hundred different texts. */
const MOST = 50_000;

const known = new WeakMap<Metrics, Metrics>();

/** The same metrics with each text measured once. Widths grow in step with the em, so one measure serves all sizes. */
export function cachedMetrics(metrics: Metrics): Metrics {
  let found = known.get(metrics);
  if (!found) {
    const ems: Record<Weight, Map<string, number>> = { regular: new Map(), bold: new Map() };
    found = {
      width(text, sizeMm, weight) {
        const widths = ems[weight];
        let em = widths.get(text);
        if (em === undefined) {
          if (widths.size > MOST) widths.clear();
          em = metrics.width(text, 1, weight);
          widths.set(text, em);
        }
        return em * sizeMm;
      },
    };
    known.set(metrics, found);
    known.set(found, found);
  }
  return found;
}
