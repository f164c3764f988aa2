import type { Sentences } from '../words.js';
import { camera } from './camera.js';
import { drawings } from './drawings.js';
import { levels } from './levels.js';
import { words } from './speech.js';

export const ja: Sentences = { ...levels, ...drawings, ...camera, ...words };
