import type { Document, Mark, Page, SharedForm, Stroke } from '../../src/sheet/display-list.js';

export const THIN: Stroke = { ink: 'form', widthMm: 0.1 };
export const PEN: Stroke = { ink: 'black', widthMm: 0.3 };

export type TextMark = Extract<Mark, { kind: 'text' }>;

export function text(text: string, more: Partial<TextMark> = {}): TextMark {
  return {
    kind: 'text',
    x: 50,
    y: 60,
    text,
    sizeMm: 4,
    weight: 'regular',
    ink: 'black',
    anchor: 'start',
    ...more,
  };
}

export function line(x1: number, y1: number, x2: number, y2: number, stroke = PEN): Mark {
  return { kind: 'line', x1, y1, x2, y2, stroke };
}

/** A form of 145 rules. */
export const RULED: SharedForm = {
  id: 'ruled',
  marks: Array.from({ length: 145 }, (_, i) => line(10, 20 + i * 1.8, 200, 20 + i * 1.8, THIN)),
};

export function page(marks: readonly Mark[], more: Partial<Page> = {}): Page {
  return { widthMm: 210, heightMm: 297, label: '1', part: 'sheet', form: null, marks, rows: [], ...more };
}

export function document(pages: readonly Page[], more: Partial<Document> = {}): Document {
  return { title: 'Cut 12', language: 'en', author: '', pages, bookmarks: [], trueSize: false, ...more };
}
