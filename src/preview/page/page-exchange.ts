/**
 * Puts a new drawing of a page in the place of the old one, line by line of its text: marks that are alike stay as they are, so that the
 * browser reads, lays out and paints only what differs.
 */

/** The marks of a page that stand alone on a line of its text each, with these lines. */
interface DrawnLines {
  /** What stands before the marks. */
  readonly head: string;
  readonly lines: readonly string[];
  readonly marks: readonly Element[];
}

const drawn = new WeakMap<Element, DrawnLines>();

/** `text`: a page as `printSvg` writes it. */
export function exchangePage(paper: Element, text: string): void {
  const { head, lines } = linesOf(text);
  const before = drawn.get(paper);
  const now = before && before.head === head ? exchangeMarks(before, lines) : null;
  if (now) drawn.set(paper, { head, lines, marks: now });
  else drawAnew(paper, text, head, lines);
}

/** Two lines open the page and its group, two close them. */
const OPENING = 2;
const CLOSING = 2;

function linesOf(text: string): { head: string; lines: readonly string[] } {
  const all = text.trimEnd().split('\n');
  return { head: all.slice(0, OPENING).join('\n'), lines: all.slice(OPENING, all.length - CLOSING) };
}

function drawAnew(paper: Element, text: string, head: string, lines: readonly string[]): void {
  const fresh = document.importNode(parsed(text), true);
  if (paper.firstElementChild) paper.firstElementChild.replaceWith(fresh);
  else paper.append(fresh);
  const marks = [...(fresh.firstElementChild?.children ?? [])];
  if (marks.length === lines.length) drawn.set(paper, { head, lines, marks });
  else drawn.delete(paper);
}

/** The marks of the new lines; null where they are not one a line. */
function exchangeMarks(before: DrawnLines, lines: readonly string[]): Element[] | null {
  const steps = stepsBetween(before.lines, lines);
  const came = lines.filter((_, i) => steps[i] === null);
  const fresh = [...parsed(`<svg xmlns="${SVG}">${came.join('\n')}</svg>`).children];
  if (fresh.length !== came.length) return null;
  const group = before.marks[0]?.parentElement;
  if (!group) return null;
  const kept = new Set(steps);
  const gone = before.marks.filter((_, i) => !kept.has(i));
  let next = 0;
  const marks = steps.map((old) =>
    old === null ? document.importNode(fresh[next++]!, true) : before.marks[old]!,
  );
  // From the last to the first: each new one is put before the one that follows it.
  let behind: Element | null = null;
  for (const [i, old] of [...steps.entries()].reverse()) {
    const mark = marks[i]!;
    if (old === null && behind) behind.before(mark, '\n');
    else if (old === null) group.append(mark, '\n');
    behind = mark;
  }
  for (const mark of gone) {
    // The end of its line.
    mark.nextSibling?.remove();
    mark.remove();
  }
  return marks;
}

const SVG = 'http://www.w3.org/2000/svg';

function parsed(text: string): Element {
  return new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
}

/** For each new line the place of the old one that stays for it, rising; null: it is new. */
function stepsBetween(before: readonly string[], now: readonly string[]): (number | null)[] {
  const places = new Map<string, number[]>();
  for (const [i, line] of before.entries()) {
    const same = places.get(line);
    if (same) same.push(i);
    else places.set(line, [i]);
  }
  let at = 0;
  return now.map((line) => {
    const place = places.get(line)?.find((one) => one >= at);
    if (place === undefined) return null;
    at = place + 1;
    return place;
  });
}
