import type { FormConvention, Words } from '../words.js';
import { cameraPages } from './camera-pages-ja.js';
import { changes } from './changes-ja.js';
import { charts } from './charts-ja.js';
import { cutList } from './cut-list-ja.js';
import { documents } from './documents-ja.js';
import { moves } from './moves-ja.js';
import { sheet } from './sheet-ja.js';

const words: Words = { sheet, moves, charts, cameraPages, cutList, changes, documents };

export const japanese: { readonly [C in FormConvention]: Words } = {
  japan: words,
  // Only a Japanese form names the total first.
  west: { ...words, sheet: { ...sheet, pageOf: (page, pages) => `${page} / ${pages}` } },
};
