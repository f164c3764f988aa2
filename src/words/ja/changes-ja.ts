import type { ChangeSentences } from '../change-sentences.js';
import { camera } from './change-camera-ja.js';
import { drawings } from './change-drawings-ja.js';
import { levels } from './change-levels-ja.js';
import { words } from './change-speech-ja.js';

export const changes: ChangeSentences = { ...levels, ...drawings, ...camera, ...words };
