import { LineFault } from './line.js';

/** `2`, `2-3`, `2-`, `1,4-6`: which pages, counted from 1. */
export function pageChoice(text: string): (page: number) => boolean {
  const ranges = text.split(',').map((part) => {
    const match = /^(\d{1,5})(?:(-)(\d{1,5})?)?$/.exec(part.trim());
    const from = Number(match?.[1]);
    const to = match?.[3] !== undefined ? Number(match[3]) : match?.[2] ? Number.POSITIVE_INFINITY : from;
    if (!match || from < 1 || to < from) {
      throw new LineFault(
        'option-value',
        text,
        '`--pages` takes pages counted from 1, such as 2, 2-3, 2- or 1,4-6.',
      );
    }
    return { from, to };
  });
  return (page) => ranges.some(({ from, to }) => page >= from && page <= to);
}
