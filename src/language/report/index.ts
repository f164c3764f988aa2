/** Printers of diagnostics. */

export { github } from './github-report.js';
export { human } from './human-report.js';
export { json } from './json-report.js';
export { inOrder, type Sources } from './report-order.js';
