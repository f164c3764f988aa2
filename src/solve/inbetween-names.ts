/** Canonical names of in-betweens, and the drawings that references mean. */

import type { Diagnostic, Report } from '../language/diagnostic.js';
import { diagnose } from '../language/diagnostic.js';
import type { Level, ShotItem } from '../shot/shot.js';
import { betweenText } from './apply-cels-lines.js';
import type { PaperDrawings } from './drawings-on-paper.js';
import type { Passages } from './inbetween-resolution.js';
import type { Drawing, Passage } from './level-drawings.js';

function listed<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/**
 * Names what has no name on paper: `1.2` where key 1 leads to one passage only, else `1>3.2`, and `1>3.2/4` for the passages of a
 * pair of keys that are written after another one with another count (`/4`: of four in-betweens).
 */
export function nameBetweens({ passages }: Passages, { loose }: PaperDrawings): void {
  const ways = new Map<string, Passage[]>();
  for (const passage of passages) listed(ways, passage.from, passage);
  const taken = new Set<string>();
  for (const drawing of [...loose, ...passages.flatMap((passage) => passage.drawings)]) {
    if (drawing.name) taken.add(drawing.name);
  }
  for (const { from, drawings } of passages) {
    if (ways.get(from)!.length > 1) continue;
    // On paper with its second key, which nobody needs who reads it here.
    for (const drawing of drawings) {
      const short = `${from}.${drawing.index}${drawing.letter}`;
      if (!drawing.pinned || drawing.reused || taken.has(short)) continue;
      drawing.name = short;
      taken.add(short);
    }
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
  { loose }: PaperDrawings,
  report: Report,
): Map<ShotItem, Drawing> {
  const { passages, references } = found;
  // Of each name with and without its second key, the drawing that is written first.
  const exact = new Map<string, Drawing>();
  const bare = new Map<string, Drawing>();
  const targets = new Map<string, Set<string>>();
  const counts = new Map<string, number>();
  for (const { from, to, drawings } of passages) {
    if (!targets.has(from)) targets.set(from, new Set());
    targets.get(from)!.add(to);
    counts.set(`${from}>${to}`, Math.max(drawings.length, counts.get(`${from}>${to}`) ?? 0));
  }
  for (const drawing of [...passages.flatMap((passage) => passage.drawings), ...loose]) {
    if (drawing.kind === 'key') continue;
    const place = `${drawing.index}${drawing.letter}`;
    const names: [Map<string, Drawing>, string][] = [
      [exact, `${drawing.key}>${drawing.to ?? ''}.${place}`],
      [bare, `${drawing.key}.${place}`],
    ];
    for (const [map, name] of names) if (!map.has(name)) map.set(name, drawing);
  }
  const meant = new Map<ShotItem, Drawing>();
  for (const reference of references) {
    const { key, to, index, letter } = reference.name;
    const tos = targets.get(key) ?? new Set<string>();
    const place = `${index}${letter}`;
    const drawing =
      to === null
        ? bare.get(`${key}.${place}`)
        : (exact.get(`${key}>${to}.${place}`) ?? exact.get(`${key}>.${place}`));
    if (drawing) meant.set(reference, drawing);
    if (to === null && tos.size > 1) report(ambiguous(level, reference, drawing, [...tos].slice(0, 6)));
    else if (!drawing) {
      const way = to ?? tos.values().next().value;
      const count = way === undefined ? 0 : (counts.get(`${key}>${way}`) ?? 0);
      const text = betweenText(reference.name);
      report(
        diagnose('reference-missing', reference.span, {
          level: level.name,
          drawing: text,
          key,
          to,
          way: way ?? null,
          count,
        }),
      );
    }
  }
  return meant;
}

/** `tos`: the first few keys that its key leads to. */
function ambiguous(
  level: Level,
  { name, span }: Passages['references'][number],
  drawing: Drawing | undefined,
  tos: readonly string[],
): Diagnostic {
  const text = betweenText(name);
  const parameters = { level: level.name, drawing: text, key: name.key, keys: tos };
  if (!drawing?.to) return diagnose('reference-ambiguous', span, parameters);
  const full = betweenText({ ...name, to: drawing.to });
  const place = { ...span, end: span.start + text.length };
  return diagnose('reference-ambiguous', span, parameters, {
    fix: { action: 'write', written: full, edits: [{ span: place, text: full }] },
  });
}
