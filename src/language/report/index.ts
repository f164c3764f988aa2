/** Printers of diagnostics. */

export { github } from './github.js';
export { human } from './human.js';
export { json } from './json.js';
export { inOrder, type Sources } from './order.js';
