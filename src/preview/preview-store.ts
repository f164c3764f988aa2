/** What the page asks for, from memory: no way ever becomes the path of a file. */

import { printSvg } from '../print/svg.js';
import { pageColumns } from '../sheet/display-list.js';
import type { CutPlayAnswer } from './play-data.js';
import type { ServedFile, ShownCut, TextPlace, TextRows } from './shown-cut.js';

/** The line of a cut in the list. */
export interface CutSummary {
  readonly id: string;
  readonly file: string;
  readonly number: string;
  readonly title: string;
  readonly state: ShownCut['state'];
  readonly fault: string;
  readonly problems: number;
  /** Counts what was shown of it. */
  readonly version: number;
}

/** A cut as a browser shows it, but for the drawings of its pages. */
export interface CutAnswer extends Omit<CutSummary, 'problems'> {
  readonly stamp: string;
  readonly problems: ShownCut['problems'];
  readonly pages: readonly {
    readonly key: string;
    readonly label: string;
    readonly part: string;
    /** Both in mm. */
    readonly width: number;
    readonly height: number;
    readonly columns: ReturnType<typeof pageColumns>;
  }[];
}

/** Rows to be shown, cut by cut. */
export interface LitRows {
  readonly line: number;
  readonly cuts: readonly ({ readonly id: string } & TextRows)[];
}

export class PreviewStore {
  private readonly cuts = new Map<string, { readonly cut: ShownCut; readonly version: number }>();
  private order: readonly string[] = [];
  private versions = 0;

  /** Puts a cut in the place of its earlier self; `fresh`: it has none. */
  put(cut: ShownCut): { readonly summary: CutSummary; readonly fresh: boolean } {
    const version = ++this.versions;
    const fresh = !this.cuts.has(cut.id);
    this.cuts.set(cut.id, { cut, version });
    return { summary: summary(cut, version), fresh };
  }

  /** Which cuts there are, in story order; those that are not looked at yet are listed later. */
  list(ids: readonly string[]): void {
    this.order = ids;
    const all = new Set(ids);
    for (const id of this.cuts.keys()) if (!all.has(id)) this.cuts.delete(id);
  }

  summaries(): readonly CutSummary[] {
    return this.order.flatMap((id) => {
      const known = this.cuts.get(id);
      return known ? [summary(known.cut, known.version)] : [];
    });
  }

  /** A cut with its pages and problems, as plain data; null: there is no such cut. */
  cut(id: string): CutAnswer | null {
    const known = this.cuts.get(id);
    if (!known) return null;
    const { cut, version } = known;
    const pages = cut.pages().map(({ hash, page }) => ({
      key: hash,
      label: page.label,
      part: page.part,
      width: page.widthMm,
      height: page.heightMm,
      columns: pageColumns(page),
    }));
    return { ...summary(cut, version), stamp: cut.stamp, problems: cut.problems, pages };
  }

  /** A page as SVG; null: there is none of that key any more. */
  page(id: string, key: string): string | null {
    const found = this.cuts
      .get(id)
      ?.cut.pages()
      .find(({ hash }) => hash === key);
    if (!found) return null;
    return printSvg(found.page, { fontFamily: 'sheet', rows: true, styled: false });
  }

  /** What the player shows of a cut; null: there is nothing to be shown. */
  play(id: string): string | null {
    const known = this.cuts.get(id);
    const play = known?.cut.play();
    if (!known || !play) return null;
    const answer: CutPlayAnswer = { id, version: known.version, ...play };
    return JSON.stringify(answer);
  }

  /** `key`: the place of a level in the stack, and the number of a drawing or nothing: `2.14`, `0.`. */
  scan(id: string, key: string): ServedFile | null {
    const [, level, number] = /^(\d{1,4})\.(\d{0,6})$/.exec(key) ?? [];
    if (level === undefined) return null;
    return this.cuts.get(id)?.cut.scan(Number(level), number ? Number(number) : null) ?? null;
  }

  sound(id: string): ServedFile | null {
    return this.cuts.get(id)?.cut.sound() ?? null;
  }

  /** The rows of a line, or of what stands at a column of it; null where no cut has to do with the file. */
  lit(file: string, line: number, column: number | null): LitRows | null {
    const all = this.order.flatMap((id) => {
      const rows = this.cuts.get(id)?.cut.rowsAt(file, line, column);
      return rows ? [{ id, ...rows }] : [];
    });
    if (all.length === 0) return null;
    const shown = all.filter(({ frames }) => frames.length > 0);
    return { line, cuts: shown.length > 0 ? shown : all.slice(0, 1) };
  }

  /** Where the text says what a row shows; null: there is no such cut, or nothing of it is said. */
  source(id: string, frame: number, level: string | null): TextPlace | null {
    return this.cuts.get(id)?.cut.placeOf(frame, level) ?? null;
  }
}

function summary({ id, file, number, title, state, fault, problems }: ShownCut, version: number): CutSummary {
  return { id, file, number, title, state, fault, problems: problems.length, version };
}
