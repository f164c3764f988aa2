/**
 * The pages of a cut as the editor has it, saved or not, and the way between a place in its text and its rows: requests of our own,
 * which an editor that shows the pages asks.
 */

import type { Location, Position } from 'vscode-languageserver';
import type { CutPrinter } from '../build/cut-printer.js';
import { newEpisodeCache } from '../episode/episode.js';
import { hasErrors } from '../language/diagnostic.js';
import { printSvg } from '../print/svg.js';
import { type LevelColumn, pageColumns } from '../sheet/display-list.js';
import { stretchesIn, stretchOn } from '../solve/text-to-frames.js';
import { placeIn } from './lsp-diagnostics.js';
import type { Analysis, Workspace } from './workspace.js';

/** `cutwright/pages`: of a text. */
export interface CutPages {
  /** The cut's number and title. */
  readonly title: string;
  /** The text has errors: the pages are those of the last one that had none, or there are none yet. */
  readonly broken: boolean;
  readonly pages: readonly CutPage[];
}

/** Lengths in mm. */
export interface CutPage {
  readonly label: string;
  readonly width: number;
  readonly height: number;
  /** A rectangle of class `row` with `data-frame` lies over each row; texts are set in the family `sheet`. */
  readonly svg: string;
  /** The columns of the levels, wherever they stand on the page. */
  readonly columns: readonly LevelColumn[];
}

/** `cutwright/rowsAt`: of a place in a text. `level`: null for what stands in no level's column. */
export interface ShownRows {
  readonly level: string | null;
  readonly from: number;
  readonly to: number;
}

/** `cutwright/placeOf`: of a row, in a level's column or in none. */
export interface RowOfLevel {
  readonly frame: number;
  readonly level: string | null;
}

/** What the editor shows of the cuts that it asks for: the last pages of each that could be printed. */
export class CutPageStore {
  private readonly good = new Map<string, Pick<CutPages, 'title' | 'pages'>>();

  constructor(
    private readonly workspace: Workspace,
    private readonly printer: () => Promise<CutPrinter>,
  ) {}

  async pagesOf({ open, name, episode, compiled }: Analysis): Promise<CutPages> {
    const { uri, path } = open;
    const { solved, diagnostics } = compiled ?? {};
    if (compiled && solved && diagnostics && !hasErrors(diagnostics)) {
      const printer = await this.printer();
      const job = { path, name, episode, named: true };
      const cache = newEpisodeCache();
      const printable = { host: this.workspace.world, job, compiled, solved, cache };
      const { printed } = printer.layOut(printer.prepare(printable));
      const pages = printed.parts.flatMap(({ pages: all }) =>
        all.map(
          (page): CutPage => ({
            label: page.label,
            width: page.widthMm,
            height: page.heightMm,
            svg: printSvg(page, { fontFamily: 'sheet', rows: true, styled: false }),
            columns: pageColumns(page),
          }),
        ),
      );
      const { cut, title } = solved.shot;
      this.good.set(uri, { title: [cut, title].filter(Boolean).join('  '), pages });
      return { broken: false, ...this.good.get(uri)! };
    }
    return { broken: true, ...(this.good.get(uri) ?? { title: name, pages: [] }) };
  }

  closed(uri: string): void {
    this.good.delete(uri);
  }
}

/** The rows of what stands at an offset: of a drawing those on which its level shows it. */
export function rowsAt({ compiled, name }: Analysis, offset: number): ShownRows[] {
  const { shot } = compiled ?? {};
  if (!shot) return [];
  return stretchesIn(shot, name, offset).map(({ level, from, to }) => ({ level, from, to }));
}

/** Where the text says what is seen on a row: in a level's column its drawing, else a move, a word, a light, or any drawing. */
export function placeOf(
  workspace: Workspace,
  analysis: Analysis,
  { frame, level }: RowOfLevel,
): Location | null {
  const { shot } = analysis.compiled ?? {};
  const found = shot && stretchOn(shot, frame, level);
  const place = found && placeIn(workspace, analysis, found.span.file);
  return place ? { uri: place.uri, range: place.text.range(found.span) } : null;
}

/** The parameters of the requests. */
export interface AtText {
  readonly textDocument: { readonly uri: string };
}
export type AtPlace = AtText & { readonly position: Position };
export type AtRow = AtText & RowOfLevel;
