/** What the page's own program (live.js) takes from typed sources: bundled as one module for browsers. */

export { fitsFilter } from './cut-filter.js';
export { lightRows } from './lit-rows.js';
export { exchangePage } from './page-exchange.js';
export { Player } from './player.js';
