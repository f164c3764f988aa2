import type { DocumentWords } from '../document-words.js';

export const documents: DocumentWords = {
  parts: {
    sheet: 'Sheet',
    charts: 'In-between charts',
    camera: 'Camera chart',
    table: 'Move table',
    strip: 'Scale strip, true size',
    overlay: 'Field overlay, true size',
  },
  blankForms: 'Blank forms',
  newCut: 'The cut is new',
  cut: (name) => `Cut ${name}`,
  noteCut: (name) => `cut ${name}`,
  onlyIn: (version, cuts, count) =>
    `only ${version === null ? 'now' : `in ${version}`}: ${count === 1 ? 'cut' : 'cuts'} ${cuts}`,
};
