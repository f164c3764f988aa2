/** Parts of a cut, in the order in which they are printed. Apart from the layout, so that `--help` need not load it. */
export const PARTS = ['sheet', 'charts', 'camera', 'table', 'strip', 'overlay'] as const;
export type PartName = (typeof PARTS)[number];
