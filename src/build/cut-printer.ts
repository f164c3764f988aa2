/** All that is needed for printing and for nothing else; loaded only when there is something to print. */

import { dirname } from 'node:path';
import type { Compiled } from '../episode/compile-cut.js';
import { dictionaryOf } from '../episode/english-words.js';
import type { EpisodeCache } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { type Fonts, openFonts } from '../print/fonts.js';
import { readLatinFonts } from '../print/latin-font.js';
import { Fingerprints } from '../print/page-fingerprint.js';
import { PageWriter, type WrittenPage } from '../print/page-writer.js';
import { printPdf } from '../print/pdf.js';
import type { Document, Weight } from '../sheet/display-list.js';
import type { PageLook } from '../sheet/page-look.js';
import type { Settings } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';
import { type CutPages, cutDocument, documentTitle, workTitle } from './cut-document.js';
import { productionOf } from './cut-production.js';
import type { PartSelection } from './print-plan.js';
import type { PrintedCut, PrintedPage } from './print-record.js';
import { cutPages } from './printed-parts.js';
import { PROGRAM, shortHash, textsOfPrint } from './settled-cuts.js';

/** A cut that is fit to print, and the world that it was compiled in. */
export interface PrintableCut {
  readonly host: Host;
  readonly job: Job;
  readonly compiled: Compiled;
  readonly solved: SolvedShot;
  /** Of the run that compiled it. */
  readonly cache: EpisodeCache;
}

/** A cut whose pages are about to be made: how they are to look, and a hash of all that they are made of. */
export interface PreparedCut {
  readonly printable: PrintableCut;
  readonly look: PageLook;
  /** Equal inputs give equal pages, but for the stamp. */
  readonly input: string;
  /** The same with nothing marked as changed. */
  readonly unmarkedInput: string;
}

/** A cut with all its pages. */
export interface LaidOutCut {
  readonly prepared: PreparedCut;
  readonly printed: CutPages;
  /** What stands on them, one by one, in order. */
  readonly pages: readonly PrintedPage[];
}

export class CutPrinter {
  private readonly fingerprints = new Fingerprints();

  private constructor(
    readonly fonts: Fonts,
    private readonly selection: PartSelection,
  ) {}

  /** Throws where the installation has lost its font. */
  static open(host: Host, selection: PartSelection = {}): CutPrinter {
    const latin = host.font('latin');
    const read = (weight: Weight): Uint8Array => {
      const font = host.font(weight);
      if (!font.ok) throw new Error(`the font of the installation cannot be read: ${font.reason}`);
      return font.value;
    };
    const fonts = openFonts({ read, latin: latin.ok ? readLatinFonts(latin.value) : null });
    return new CutPrinter(fonts, selection);
  }

  /** Decides how a cut is to look. `marked`: what is to be marked on it as changed. */
  prepare(printable: PrintableCut, marked?: PageLook['marked']): PreparedCut {
    const { settings } = printable.job.episode;
    const { neighbours, lent } = printable.compiled.surroundings;
    // The one place in which the look of a cut is made.
    const look: PageLook = {
      settings,
      metrics: this.fonts.metrics,
      dictionary: dictionaryOf(printable.host),
      stamp: stamp(printable),
      neighbours,
      lent,
      ...(this.selection.only === 'cover' ? { production: productionOf(printable) } : {}),
      marked,
    };
    const input = this.input(printable, look);
    const unmarkedInput = marked ? this.input(printable, { ...look, marked: undefined }) : input;
    return { printable, look, input, unmarkedInput };
  }

  /** The same with nothing marked. */
  unmarked(prepared: PreparedCut): PreparedCut {
    return prepared.look.marked ? this.prepare(prepared.printable) : prepared;
  }

  layOut(prepared: PreparedCut): LaidOutCut {
    const { printable, look } = prepared;
    const printed = cutPages(printable.solved, look, this.selection);
    const pages = printed.parts.flatMap((part) =>
      part.pages.map(
        (page): PrintedPage => ({
          label: page.label,
          hash: this.fingerprints.of(page, look.stamp),
          here: true,
        }),
      ),
    );
    return { prepared, printed, pages };
  }

  /**
   * What the record of a file tells of a cut of which it holds the pages that `keep` chooses. `known`: the others were printed
   * before as they are.
   */
  record({ prepared, pages }: LaidOutCut, keep: (page: number) => boolean, known: boolean): PrintedCut {
    const { printable, input, unmarkedInput, look } = prepared;
    return {
      cut: printable.solved.shot.cut,
      input,
      unmarkedInput,
      // Whether `progress.csv` was the same, no hash of the cut's texts tells.
      texts: look.marked || look.production ? null : textsOfPrint(printable, this.selection),
      pages: pages.map((page, i) =>
        keep(i + 1) ? page : { label: page.label, hash: known ? page.hash : null, here: false },
      ),
    };
  }

  /** The pages as they stand in a file, whatever else is in it. Throws MissingGlyph. */
  write({ title, parts }: CutPages): CutPages<WrittenPage> {
    const writer = PageWriter.of(this.fonts);
    return {
      title,
      parts: parts.map((part) => ({
        title: part.title,
        pages: part.pages.map((page) => writer.write(page)),
      })),
    };
  }

  /** A cut, or some pages of it, as a PDF. */
  cut({ prepared }: LaidOutCut, printed: CutPages, record: string): Promise<Uint8Array> {
    const { printable, look } = prepared;
    const document = cutDocument(printed, {
      title: documentTitle(printable.solved, printed),
      author: printable.solved.shot.artists.join(', '),
      language: look.settings.labels,
    });
    return printPdf(document, this.fonts, record);
  }

  print(document: Document): Promise<Uint8Array> {
    return printPdf(document, this.fonts);
  }

  private input(
    { compiled, solved }: PrintableCut,
    { metrics: _, dictionary: __, stamp: ___, ...look }: PageLook,
  ): string {
    const { artists } = solved.shot;
    const all = [PROGRAM, compiled.digest, artists, look, this.selection];
    return shortHash(all);
  }
}

/** Tells two paper copies apart: a hash of what the cut says, and the commit that it stands on. */
function stamp({ host, compiled, job, cache }: PrintableCut): string {
  const { digest } = compiled;
  const commit = commitOf(host, job.path === null ? host.cwd : dirname(job.path), cache);
  return commit ? `${digest} · ${commit}` : digest;
}

/** Commits by folder, for the length of a run. */
const commits = new WeakMap<EpisodeCache, Map<string, string | undefined>>();

function commitOf(host: Host, folder: string, run: EpisodeCache): string | undefined {
  const known = commits.get(run) ?? new Map<string, string | undefined>();
  commits.set(run, known);
  if (!known.has(folder)) known.set(folder, host.commit(folder));
  return known.get(folder);
}

export function blankDocument(pages: Document['pages'], settings: Settings): Document {
  const title = [workTitle(settings), wordsOf(settings).documents.blankForms].filter(Boolean).join(' · ');
  return { title, author: '', language: settings.labels, pages, bookmarks: [], trueSize: false };
}
