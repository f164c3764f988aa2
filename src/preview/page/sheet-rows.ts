/** The rows of the sheets that are shown: the one that is played is lit, a press goes there, drawing over rows takes a range. */

import type { FrameRange } from '../player/play-clock.js';
import { levelAt } from './lit-rows.js';

export interface RowHooks {
  /** A row was pressed, in the column of a level or (null) in none. */
  went(frame: number, level: string | null): void;
  took(range: FrameRange): void;
}

export class SheetRows {
  private readonly byFrame = new Map<number, SVGRectElement[]>();
  /** What lies over the rows that are lit: a page that was changed itself would be painted anew on every frame. */
  private readonly bars: HTMLElement[] = [];
  private litFrame: number | null = null;
  private range: FrameRange | null = null;
  private drawnFrom: number | null = null;
  private drawnLevel: string | null = null;
  private drawn: FrameRange | null = null;

  /** `desk`: what scrolls; `pages`: what holds the pages. */
  constructor(
    private readonly desk: HTMLElement,
    private readonly pages: HTMLElement,
    private readonly hooks: RowHooks,
  ) {
    pages.addEventListener('pointerdown', (event) => this.begin(event));
    pages.addEventListener('pointermove', (event) => this.move(event));
    addEventListener('pointerup', () => this.end());
    addEventListener('pointercancel', () => {
      this.drawnFrom = null;
      this.drawn = null;
      this.drawRange();
    });
  }

  /** The pages have been exchanged. */
  renew(): void {
    this.byFrame.clear();
    for (const row of this.pages.querySelectorAll<SVGRectElement>('.row')) {
      const frame = Number(row.dataset.frame);
      const all = this.byFrame.get(frame);
      if (all) all.push(row);
      else this.byFrame.set(frame, [row]);
    }
    const { litFrame } = this;
    this.litFrame = null;
    this.light(litFrame, false);
    this.drawRange();
  }

  /** Null: none. `follow`: the sheet is scrolled to where it can be seen. */
  light(frame: number | null, follow: boolean): void {
    if (frame === this.litFrame) return;
    this.litFrame = frame;
    const rows = (frame === null ? null : this.byFrame.get(frame)) ?? [];
    rows.forEach((row, i) => {
      this.bars[i] ??= newBar();
      place(this.bars[i]!, row);
    });
    for (const bar of this.bars.splice(rows.length)) bar.remove();
    const [first] = rows;
    if (first && follow) this.follow(first);
  }

  /** The rows that are played; null: no fewer than all. */
  mark(range: FrameRange | null): void {
    if (range?.first === this.range?.first && range?.last === this.range?.last) return;
    this.range = range;
    this.drawRange();
  }

  private follow(row: Element): void {
    const { left, right, top, bottom } = this.desk.getBoundingClientRect();
    const seen = row.getBoundingClientRect();
    const head = 52;
    const across = seen.left >= left && seen.right <= right;
    if (seen.top >= top + head && seen.bottom <= bottom - 4 && (across || seen.width > right - left)) return;
    row.scrollIntoView({ block: 'center', inline: 'nearest' });
  }

  private drawRange(): void {
    const range = this.drawn ?? this.range;
    for (const [frame, rows] of this.byFrame) {
      const inside = range !== null && frame >= range.first && frame <= range.last;
      for (const row of rows) row.classList.toggle('ranged', inside);
    }
  }

  private begin(event: PointerEvent): void {
    const row = rowAt(event.target);
    if (row === null || event.button !== 0) return;
    const frame = Number(row.dataset.frame);
    const level = levelAt(row, event);
    // A finger that moves scrolls; a press is told by `click`.
    if (event.pointerType === 'touch') {
      row.addEventListener('click', () => this.hooks.went(frame, level), { once: true });
      return;
    }
    event.preventDefault();
    this.desk.focus({ preventScroll: true });
    this.drawnFrom = frame;
    this.drawnLevel = level;
  }

  private move(event: PointerEvent): void {
    if (this.drawnFrom === null) return;
    const row = rowAt(event.target);
    const frame = row && Number(row.dataset.frame);
    if (frame === null || (frame === this.drawnFrom && this.drawn === null)) return;
    this.drawn = { first: Math.min(frame, this.drawnFrom), last: Math.max(frame, this.drawnFrom) };
    this.drawRange();
  }

  private end(): void {
    const { drawnFrom, drawn } = this;
    this.drawnFrom = null;
    this.drawn = null;
    if (drawnFrom === null) return;
    if (drawn && drawn.last > drawn.first) this.hooks.took(drawn);
    else this.hooks.went(drawnFrom, this.drawnLevel);
    this.drawRange();
  }
}

function rowAt(target: EventTarget | null): SVGRectElement | null {
  return target instanceof SVGRectElement && target.classList.contains('row') ? target : null;
}

function newBar(): HTMLElement {
  const bar = document.createElement('div');
  bar.className = 'playing-row';
  return bar;
}

function place(bar: HTMLElement, row: SVGRectElement): void {
  const paper = row.closest('.paper');
  const view = row.ownerSVGElement?.viewBox.baseVal;
  if (!paper || !view) return;
  const percent = (name: string, of: number) => `${(Number(row.getAttribute(name)) / of) * 100}%`;
  bar.style.left = percent('x', view.width);
  bar.style.width = percent('width', view.width);
  bar.style.top = percent('y', view.height);
  bar.style.height = percent('height', view.height);
  bar.dataset.frame = row.dataset.frame;
  if (bar.parentElement !== paper) paper.append(bar);
}
