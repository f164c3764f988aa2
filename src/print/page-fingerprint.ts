/** A short hash of what stands on a page: equal where the paper is equal. */

import { createHash } from 'node:crypto';
import type { Mark, Page, Pt, SharedForm, Stroke } from '../sheet/display-list.js';

/** Characters of a hash: 60 bits, which no two versions of a page share by chance. */
const LENGTH = 10;

/**
 * Hashes pages by their marks as they are printed: measures to a thousandth of a millimetre, the text of each mark. What tells
 * two copies of one content apart (`stamp`, as it stands at the foot) is left out, and so is the page's label.
 */
export class Fingerprints {
  private readonly forms = new WeakMap<SharedForm, string>();
  private numbers = new Int32Array(1 << 14);
  private length = 0;
  private words: string[] = [];

  of(page: Page, stamp: string): string {
    this.number(page.widthMm);
    this.number(page.heightMm);
    this.words.push(page.form ? this.form(page.form) : '');
    for (const mark of page.marks) {
      if (mark.kind !== 'text' || mark.text !== stamp || stamp === '') this.mark(mark);
    }
    return this.take();
  }

  private form(form: SharedForm): string {
    const known = this.forms.get(form);
    if (known !== undefined) return known;
    const inner = new Fingerprints();
    for (const mark of form.marks) inner.mark(mark);
    const made = inner.take();
    this.forms.set(form, made);
    return made;
  }

  private take(): string {
    const bytes = new Uint8Array(this.numbers.buffer, 0, this.length * 4);
    const words = this.words.join('\0');
    this.length = 0;
    this.words = [];
    return createHash('sha256').update(`${words}\0\0`).update(bytes).digest('base64url').slice(0, LENGTH);
  }

  private mark(mark: Mark): void {
    switch (mark.kind) {
      case 'line':
        this.code(1);
        this.pair(mark.x1, mark.y1);
        this.pair(mark.x2, mark.y2);
        this.stroke(mark.stroke);
        break;
      case 'text':
        this.code(2);
        this.pair(mark.x, mark.y);
        this.number(mark.sizeMm);
        this.number(mark.turn ?? 0);
        this.number((mark.squeeze ?? 1) * 100);
        this.words.push(mark.text, mark.weight, mark.ink, mark.anchor);
        break;
      case 'circle':
        this.code(3);
        this.pair(mark.x, mark.y);
        this.number(mark.r);
        this.stroke(mark.stroke);
        this.words.push(mark.fill ?? '');
        break;
      case 'path':
        this.code(mark.closed ? 4 : 5);
        this.points(mark.points);
        this.stroke(mark.stroke);
        this.words.push(mark.fill ?? '');
        break;
      case 'curve':
        this.code(6);
        this.points(mark.points);
        this.stroke(mark.stroke);
        break;
      case 'tint':
        this.code(7);
        this.pair(mark.x, mark.y);
        this.pair(mark.width, mark.height);
        break;
      case 'hatch':
        this.code(8);
        this.pair(mark.x, mark.y);
        this.pair(mark.width, mark.height);
        this.number(mark.gapMm);
        this.stroke(mark.stroke);
        break;
      default:
        mark satisfies never;
    }
  }

  private stroke(stroke: Stroke | null): void {
    if (stroke === null) {
      this.code(0);
      return;
    }
    this.code(stroke.dash ? 2 : 1);
    this.number(stroke.widthMm);
    if (stroke.dash) this.pair(...stroke.dash);
    this.words.push(stroke.ink);
  }

  private points(points: readonly Pt[]): void {
    this.code(points.length);
    for (const [x, y] of points) this.pair(x, y);
  }

  private pair(x: number, y: number): void {
    this.number(x);
    this.number(y);
  }

  private number(value: number): void {
    this.code(Math.round(value * 1000));
  }

  private code(value: number): void {
    if (this.length === this.numbers.length) {
      const larger = new Int32Array(this.numbers.length * 2);
      larger.set(this.numbers);
      this.numbers = larger;
    }
    this.numbers[this.length++] = value;
  }
}
