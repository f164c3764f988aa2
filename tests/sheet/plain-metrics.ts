/** A font whose every character is half an em wide, whatever its weight: widths that can be worked out by hand. */

import type { Metrics } from '../../src/sheet/display-list.js';

export const plainMetrics: Metrics = { width: (text, sizeMm) => [...text].length * sizeMm * 0.5 };
