/** Canonical names of in-betweens, and the drawings that references mean. */

import type { Report } from '../language/diagnostic.js';
import { diagnose } from '../language/diagnostic.js';
import type { Item, Level } from '../shot/shot.js';
import type { Drawing, Passage } from './drawing.js';
import type { Known } from './known.js';
import type { Passages } from './passages.js';
import { betweenText } from './pins.js';

function listed<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/**
 * Names what has no name on paper: `1.2` where key 1 leads to one passage only, else `1>3.2`, and `1>3.2/4` for the passages of a
 * pair of keys that are written after another one with another count (`/4`: of four in-betweens).
 */
export function nameBetweens({ passages }: Passages, { loose }: Known): void {
  const ways = new Map<string, Passage[]>();
  for (const passage of passages) listed(ways, passage.from, passage);
  const taken = new Set<string>();
  for (const drawing of [...loose, ...passages.flatMap((passage) => passage.drawings)]) {
    if (drawing.name) taken.add(drawing.name);
  }
  for (const { from, to, drawings } of passages) {
    const names = [
      ...(ways.get(from)!.length === 1 ? [(index: number) => `${from}.${index}`] : []),
      (index: number) => `${from}>${to}.${index}`,
      (index: number) => `${from}>${to}.${index}/${drawings.length}`,
    ];
    const open = drawings.filter((drawing) => drawing.name === '');
    const name =
      names.find((each) => open.every((drawing) => !taken.has(each(drawing.index)))) ?? names.at(-1)!;
    for (const drawing of open) {
      drawing.name = name(drawing.index);
      taken.add(drawing.name);
    }
  }
}

/**
 * The drawing of each reference; those that mean none are reported and left out. Where one pair of keys has two counts, the
 * passage that is written first is meant.
 */
export function findReferences(
  level: Level,
  found: Passages,
  { loose }: Known,
  report: Report,
): Map<Item, Drawing> {
  const { passages, references } = found;
  const byName = new Map<string, Drawing[]>();
  const targets = new Map<string, Set<string>>();
  const counts = new Map<string, number>();
  for (const passage of passages) {
    const { from, to } = passage;
    if (!targets.has(from)) targets.set(from, new Set());
    targets.get(from)!.add(to);
    counts.set(`${from}>${to}`, Math.max(passage.drawings.length, counts.get(`${from}>${to}`) ?? 0));
  }
  for (const drawing of [...passages.flatMap((passage) => passage.drawings), ...loose]) {
    if (drawing.kind !== 'key') listed(byName, `${drawing.key}.${drawing.index}${drawing.letter}`, drawing);
  }
  const meant = new Map<Item, Drawing>();
  for (const reference of references) {
    const { key, to, index, letter } = reference.name;
    const tos = [...(targets.get(key) ?? [])];
    const text = betweenText(reference.name);
    const drawings = (byName.get(`${key}.${index}${letter}`) ?? []).filter(
      (drawing) => to === null || drawing.to === null || drawing.to === to,
    );
    if (to === null && tos.length > 1) {
      const fitting = drawings[0]?.to ?? tos[0]!;
      const place = { ...reference.span, end: reference.span.start + text.length };
      report(
        diagnose(
          'reference-ambiguous',
          reference.span,
          `Key ${key} of level ${level.name} leads to several keys (${tos.join(', ')}), so ${text} could be any of theirs.`,
          drawings[0]
            ? {
                fix: {
                  title: `write \`${betweenText({ ...reference.name, to: fitting })}\``,
                  edits: [{ span: place, text: betweenText({ ...reference.name, to: fitting }) }],
                },
              }
            : {},
        ),
      );
    } else if (!drawings[0]) {
      const way = to ?? tos[0];
      const count = way === undefined ? 0 : (counts.get(`${key}>${way}`) ?? 0);
      const why =
        count === 0
          ? `no in-between leads from key ${key}${to === null ? '' : ` to key ${to}`}`
          : `from key ${key} to key ${way} there ${count === 1 ? 'is 1 in-between' : `are ${count} in-betweens`}`;
      report(
        diagnose('reference-missing', reference.span, `Level ${level.name} has no drawing ${text}: ${why}.`),
      );
    }
    if (drawings[0]) meant.set(reference, drawings[0]);
  }
  return meant;
}
