/** Every way that a text takes through the program, for tests that try many texts. */

import { cutDocument, documentTitle } from '../../src/build/cut-document.js';
import { cutPages } from '../../src/build/printed-parts.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { type Compiled, compile } from '../../src/episode/compile-cut.js';
import { type Episode, noEpisode } from '../../src/episode/episode.js';
import { openEpisode } from '../../src/episode/manifest.js';
import { TABLES, toCsv } from '../../src/export/cut-csv.js';
import { jsonText, toJson } from '../../src/export/cut-json.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { format } from '../../src/language/format/format-text.js';
import { messageOf } from '../../src/language/message.js';
import { printPdf } from '../../src/print/pdf.js';
import { printSvg } from '../../src/print/svg.js';
import type { Document } from '../../src/sheet/display-list.js';
import { terminalSheet } from '../../src/sheet/terminal/terminal-sheet.js';
import type { Settings } from '../../src/shot/settings.js';
import { testFonts } from '../fonts.js';

/** A cut beside an `episode.yaml` of the given text, or outside any episode. */
export function compiled(text: string, manifest?: string): Compiled {
  const host = memoryHost({
    'this.cut': text,
    ...(manifest === undefined ? {} : { 'episode.yaml': manifest }),
  });
  const episode: Episode =
    manifest === undefined ? noEpisode : openEpisode(host, '/work/episode.yaml', 'episode.yaml');
  return compile(host, '/work/this.cut', episode, { name: 'this.cut' });
}

export const hasErrors = ({ diagnostics }: Compiled): boolean =>
  diagnostics.some(({ severity }) => severity === 'error');

/** All pages of a cut without errors, those in true size too, as a document. */
export function documentOf(cut: Compiled, settings: Partial<Settings> = {}): Document | null {
  if (!cut.solved) return null;
  const look = {
    settings: { ...cut.solved.shot.settings, ...settings },
    metrics: testFonts().metrics,
    stamp: '1a2b3c4d',
    neighbours: cut.surroundings.neighbours,
    lent: cut.surroundings.lent,
  };
  const pages = cutPages(cut.solved, look, { trueSize: true });
  const author = cut.solved.shot.artists.join(', ');
  return cutDocument(pages, { title: documentTitle(cut.solved, pages), author, language: 'en' });
}

/** Checks, formats, exports and compares with itself; throws where the program does, or where equal cuts differ. */
export function throughAll(text: string, manifest?: string): Compiled {
  const cut = compiled(text, manifest);
  for (const one of cut.diagnostics) messageOf(one, 'en');
  format('this.cut', text);
  const { solved } = cut;
  if (!solved) return cut;
  for (const table of TABLES) toCsv(solved, table);
  const { neighbours, lent } = cut.surroundings;
  terminalSheet(solved, { width: 80, labels: 'en', neighbours, lent });
  if (hasErrors(cut)) return cut;
  jsonText(toJson(solved, cut.diagnostics, cut.sources));
  const changes = compare(solved, solved);
  if (changes.length > 0) throw new Error(`a cut differs from itself: ${JSON.stringify(changes)}`);
  return cut;
}

/** Prints a cut without errors as PDF and SVG. */
export async function printed(cut: Compiled): Promise<void> {
  if (hasErrors(cut)) return;
  for (const convention of ['japan', 'west'] as const) {
    const document = documentOf(cut, { convention });
    if (!document || document.pages.length === 0) return;
    for (const page of document.pages) printSvg(page);
    await printPdf(document, testFonts());
  }
}
