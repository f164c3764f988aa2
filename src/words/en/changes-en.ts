import type { ChangeSentences } from '../change-sentences.js';
import { camera } from './change-camera-en.js';
import { drawings } from './change-drawings-en.js';
import { levels } from './change-levels-en.js';
import { words } from './change-speech-en.js';

export const changes: ChangeSentences = { ...levels, ...drawings, ...camera, ...words };
