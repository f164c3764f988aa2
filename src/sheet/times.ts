export { feetAndFrames, rowName, secondsAndFrames } from '../shot/times.js';
