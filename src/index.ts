/**
 * The library: the text of a cut → its solution, its pages, PDF, SVG, JSON and CSV, without a file or a process.
 *
 *     import { compileCut } from 'cutwright';
 *
 *     const cut = compileCut('cut 12 "Rooftop"\ntime 3+0\nA "girl": 1--2--3..\n', { settings: { paper: 'A4' } });
 *     for (const { severity, message, place } of cut.report().diagnostics)
 *       console.error(`${place.file}:${place.start?.line}: ${severity}: ${message}`);
 *     if (cut.printable) {
 *       console.log(cut.solved.counts.drawings, cut.json().time, cut.csv('exposures').split('\r\n').length);
 *       const [first] = cut.pages();
 *       console.log(first.widthMm, first.heightMm, cut.svg(first).length, (await cut.pdf()).length);
 *     }
 *
 * Frames count from 1, lengths are in millimetres, unless a name says otherwise. The same input gives the same bytes.
 */

import { workTitle } from './build/cut-document.js';
import { CutPrinter, type LaidOutCut } from './build/cut-printer.js';
import type { PartSelection } from './build/print-plan.js';
import { writeRecord } from './build/print-record.js';
import { compile } from './episode/compile-cut.js';
import { newEpisodeCache, noEpisode, overrideSettings } from './episode/episode.js';
import { type TableName, toCsv } from './export/cut-csv.js';
import { type Exported, type ExportOptions, toJson } from './export/cut-json.js';
import { memoryHost } from './host/memory-host.js';
import { hasErrors } from './language/diagnostic.js';
import { type JsonReport, jsonReport } from './language/report/machine-reports.js';
import { printSvg } from './print/svg.js';
import type { Page } from './sheet/display-list.js';
import type { Settings } from './shot/settings.js';
import type { SolvedShot } from './solve/solved-shot.js';

export type { PartName, PartSelection } from './build/print-plan.js';
export type { TableName } from './export/cut-csv.js';
export type { Exported, ExportOptions } from './export/cut-json.js';
export type { JsonPlace, JsonPoint, JsonReport } from './language/report/machine-reports.js';
export type { Mark, Page } from './sheet/display-list.js';
export type { Settings } from './shot/settings.js';
export type { SolvedShot } from './solve/solved-shot.js';

export interface CompileOptions {
  /** What messages call the text: the name of a file, without a folder. `text.cut` where nothing is said. */
  readonly name?: string;
  /** Of the sheet and of the episode; what is left out is as for a cut outside any episode. */
  readonly settings?: Partial<Settings>;
  /** Texts that the cut may `use`, by their names in its folder. */
  readonly files?: Readonly<Record<string, string>>;
}

/** A cut that was compiled; with errors it can be reported, and nothing else. */
export interface BrokenCut {
  readonly printable: false;
  /** What could be solved all the same, or null. */
  readonly solved: SolvedShot | null;
  /** All that is wrong with the text, and with those that it uses, in the order of places. */
  report(): JsonReport;
}

/** A cut without errors; there may be warnings. */
export interface PrintableText {
  readonly printable: true;
  /** Exposures, numbers, camera: all in frames and millimetres. */
  readonly solved: SolvedShot;
  report(): JsonReport;
  /** Its pages as lists of marks, in the order of print. Without a selection: all parts but those in true size. */
  pages(selection?: PartSelection): readonly Page[];
  /** The same pages as `cutwright build` writes them outside a work tree of git. */
  pdf(selection?: PartSelection): Promise<Uint8Array>;
  /** One of its pages as an SVG document. */
  svg(page: Page): string;
  /** What `cutwright export` writes, as data; `src/export/schema.json` describes it. */
  json(options?: ExportOptions): Exported;
  /** A table of it as CSV (RFC 4180) with its head. */
  csv(table: TableName, options?: ExportOptions): string;
}

/**
 * Compiles the text of one cut. Never throws on any text: what is wrong is in the report. A text that only holds what other cuts
 * use is no cut, so it is not printable, without an error. Throws only where the installation has lost its font, when pages are
 * asked for.
 */
export function compileCut(text: string, options: CompileOptions = {}): BrokenCut | PrintableText {
  const { name = 'text.cut', settings = {}, files = {} } = options;
  const host = memoryHost({ ...files, [name]: text });
  const path = `${host.cwd}/${name}`;
  const episode = overrideSettings(noEpisode, settings);
  const cache = newEpisodeCache();
  const compiled = compile(host, path, episode, { name, cache });
  const { solved, sources, diagnostics } = compiled;
  const report = (): JsonReport => jsonReport(diagnostics, sources);
  if (solved === null || hasErrors(diagnostics)) return { printable: false, solved, report };
  const job = { path, name, episode, named: true };
  const layOut = (printer: CutPrinter): LaidOutCut =>
    printer.layOut(printer.prepare({ host, job, compiled, solved, cache }));
  return {
    printable: true,
    solved,
    report,
    pages: (selection) =>
      layOut(CutPrinter.open(host, selection)).printed.parts.flatMap(({ pages }) => pages),
    pdf(selection) {
      const printer = CutPrinter.open(host, selection);
      const laidOut = layOut(printer);
      const { printed } = laidOut;
      const cuts = [printer.record(laidOut, () => true, false)];
      const record = writeRecord({ of: 'cut', work: workTitle(episode.settings), cuts });
      return printer.cut(laidOut, printed, record);
    },
    svg: (page) => printSvg(page),
    json: (more) => toJson(solved, diagnostics, sources, more),
    csv: (table, more) => toCsv(solved, table, more),
  };
}
