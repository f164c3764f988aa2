import type { SolvedShot } from '../../solve/solved-shot.js';

/** New key drawings by row: `2`, or `A 2` where several levels go along. In the west by their final numbers. */
export function keysOf(
  levels: readonly string[],
  { levels: solved }: SolvedShot,
  west: boolean,
): ReadonlyMap<number, readonly string[]> {
  const found = new Map<number, string[]>();
  const named = solved.filter(({ name }) => levels.includes(name));
  for (const { name, exposures } of named)
    for (const { frame, kind, drawing, cel, starts } of exposures) {
      if (kind !== 'key' || !starts) continue;
      const key = String(west ? cel : drawing);
      const all = found.get(frame) ?? [];
      all.push(named.length > 1 ? `${name} ${key}` : key);
      found.set(frame, all);
    }
  return found;
}
