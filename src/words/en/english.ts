import type { Words } from '../words.js';
import { cameraPages } from './camera-pages-en.js';
import { changes } from './changes-en.js';
import { charts } from './charts-en.js';
import { cutList } from './cut-list-en.js';
import { documents } from './documents-en.js';
import { moves } from './moves-en.js';
import { sheet } from './sheet-en.js';

export const english: Words = { sheet, moves, charts, cameraPages, cutList, changes, documents };
