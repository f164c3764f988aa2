/** Cuts as text to laid-out pages, and the geometry of their marks, for tests that look at marks and not at pixels. */

import { messageOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';
import type { Mark, Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import type { PageLook } from '../../src/sheet/page-look.js';
import { bind } from '../../src/shot/bind-cut.js';
import { defaults, type Settings } from '../../src/shot/settings.js';
import type { Shot } from '../../src/shot/shot.js';
import { solve } from '../../src/solve/solve-shot.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { testFonts } from '../fonts.js';

export type Text = Extract<Mark, { kind: 'text' }>;
export type Line = Extract<Mark, { kind: 'line' }>;

export function lookOf(settings: Partial<Settings> = {}): PageLook {
  return { settings: { ...defaults, ...settings }, metrics: testFonts().metrics, stamp: '1a2b3c4d' };
}

/** `change` makes of the shot what the text cannot say. */
export function solvedCut(
  text: string,
  settings: Partial<Settings> = {},
  change: (shot: Shot) => Shot = (shot) => shot,
): SolvedShot {
  const { tree, diagnostics } = parse('this.cut', text);
  const bound = bind(tree, [], { ...defaults, ...settings });
  const errors = [...diagnostics, ...bound.diagnostics].filter(({ severity }) => severity === 'error');
  if (!bound.shot || errors.length > 0) throw new Error(errors.map((one) => messageOf(one, 'en')).join('\n'));
  return solve(change(bound.shot));
}

export function laid(text: string, settings: Partial<Settings> = {}): Page[] {
  return sheetPages(solvedCut(text, settings), lookOf(settings));
}

export const textsOf = (marks: readonly Mark[]): Text[] => marks.filter((mark) => mark.kind === 'text');
export const linesOf = (marks: readonly Mark[]): Line[] => marks.filter((mark) => mark.kind === 'line');

/** Everything that a page says outside its form, in one string. */
export const said = (page: Page): string =>
  textsOf(page.marks)
    .map(({ text }) => text)
    .join(' ');

export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The rectangle about a text's ink, upright or on its side: figures and capitals as high as they are in the font. */
export function boundsOf(text: Text): Bounds {
  const known = bounds.get(text) ?? measured(text);
  bounds.set(text, known);
  return known;
}

/** Marks are never changed: several checks of a page ask for the bounds of the same texts. */
const bounds = new WeakMap<Text, Bounds>();

function measured(text: Text): Bounds {
  const { metrics } = lookOf();
  const width = metrics.width(text.text, text.sizeMm, text.weight) * (text.squeeze ?? 1);
  const from = { start: 0, middle: -width / 2, end: -width }[text.anchor];
  const angle = ((text.turn ?? 0) * Math.PI) / 180;
  // Commas and full stops of Japanese fill the lower left quarter of their place only.
  const dot = /^[、。，．]$/u.test(text.text);
  const wide = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u.test(text.text);
  const corners = [
    [from, (dot ? -0.25 : wide ? -0.83 : -0.74) * text.sizeMm],
    [from + (dot ? width * 0.4 : width), (wide ? 0.09 : 0.01) * text.sizeMm],
  ].map(([along, down]) => [
    text.x + along! * Math.cos(angle) - down! * Math.sin(angle),
    text.y + along! * Math.sin(angle) + down! * Math.cos(angle),
  ]);
  const xs = corners.map(([x]) => x!);
  const ys = corners.map(([, y]) => y!);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** Whether two rectangles have more than `by` in common, both ways. */
export function overlap(a: Bounds, b: Bounds, by = 0.05): boolean {
  return (
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > by &&
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > by
  );
}
