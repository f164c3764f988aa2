import type { Words } from '../words.js';
import { cameraPages } from './camera-pages-ja.js';
import { changes } from './changes-ja.js';
import { charts } from './charts-ja.js';
import { cutList } from './cut-list-ja.js';
import { documents } from './documents-ja.js';
import { moves } from './moves-ja.js';
import { sheet } from './sheet-ja.js';

export const japanese: Words = { sheet, moves, charts, cameraPages, cutList, changes, documents };
