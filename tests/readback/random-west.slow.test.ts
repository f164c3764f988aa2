import { randomCuts } from './random.js';

randomCuts('west');
