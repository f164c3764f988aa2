import { randomCuts } from './random.js';

randomCuts('japan');
