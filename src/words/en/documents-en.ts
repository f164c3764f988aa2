import type { DocumentWords } from '../document-words.js';
import { capital, type EnglishTerms } from './terms-en.js';

export const documentsIn = ({ cut }: EnglishTerms): DocumentWords => ({
  parts: {
    sheet: 'Sheet',
    charts: 'In-between charts',
    camera: 'Camera chart',
    table: 'Move table',
    strip: 'Scale strip, true size',
    overlay: 'Field overlay, true size',
  },
  blankForms: 'Blank forms',
  newCut: `The ${cut} is new`,
  cut: (name) => `${capital(cut)} ${name}`,
  noteCut: (name) => `${cut} ${name}`,
  onlyIn: (version, cuts, count) =>
    `only ${version === null ? 'now' : `in ${version}`}: ${count === 1 ? cut : `${cut}s`} ${cuts}`,
});
