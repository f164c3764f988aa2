/**
 * Places for labels that would like to stand at `wanted` (rising) but must be `gap` apart, between `low` and `high`:
 * in order, as near to their wishes as can be (least squares). There must be room: (n − 1) × gap ≤ high − low.
 */
export function spreadLabels(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  // With the gaps taken out, "gap apart" becomes "not falling": neighbours that fall are pooled at their mean.
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((wish, i) => {
    let pool = { sum: wish - i * gap, count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum / last.count > pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
    }
    pools.push(pool);
  });
  const top = high - (wanted.length - 1) * gap;
  return pools
    .flatMap(({ sum, count }) => Array<number>(count).fill(Math.min(Math.max(sum / count, low), top)))
    .map((place, i) => place + i * gap);
}
