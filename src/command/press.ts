/** All that is needed for printing and for nothing else; loaded only when there is something to print. */

import { createHash } from 'node:crypto';
import { dirname } from 'node:path';
import type { Compiled } from '../episode/compile.js';
import type { Job } from '../episode/find.js';
import type { PrintedPage } from '../episode/record.js';
import type { Shelf } from '../episode/shelf.js';
import type { Host } from '../host/host.js';
import { Fingerprints } from '../print/fingerprint.js';
import { type Fonts, openFonts } from '../print/fonts.js';
import { printPdf } from '../print/pdf.js';
import type { Look } from '../sheet/look.js';
import type { Document } from '../sheet/marks.js';
import type { Settings } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved.js';
import { WORDS } from '../words/words.js';
import { bindCut, type Choice, documentTitle, type Printed, printedCut, workTitle } from './document.js';
import { PROGRAM } from './program.js';

/** A cut that is fit to print, and the world that it was compiled in. */
export interface Told {
  readonly host: Host;
  readonly job: Job;
  readonly compiled: Compiled;
  readonly solved: SolvedShot;
  /** Of the run that compiled it. */
  readonly shelf: Shelf;
}

/** A cut whose pages are about to be made: how they are to look, and a hash of all that they are made of. */
export interface Copy {
  readonly told: Told;
  readonly look: Look;
  /** Equal inputs give equal pages, but for the stamp. */
  readonly input: string;
}

/** A cut with all its pages. */
export interface Laid {
  readonly copy: Copy;
  readonly printed: Printed;
  /** What stands on them, one by one, in order. */
  readonly pages: readonly PrintedPage[];
}

export class Press {
  private readonly fingerprints = new Fingerprints();

  private constructor(
    readonly fonts: Fonts,
    private readonly choice: Choice,
  ) {}

  /** Throws where the installation has lost its font. */
  static open(host: Host, choice: Choice = {}): Press {
    const [regular, bold] = [host.font('regular'), host.font('bold')];
    if (!regular.ok) throw new Error(`the font of the installation cannot be read: ${regular.reason}`);
    if (!bold.ok) throw new Error(`the font of the installation cannot be read: ${bold.reason}`);
    return new Press(openFonts(regular.value, bold.value), choice);
  }

  /** Decides how a cut is to look. `marked`: what is to be marked on it as changed. */
  copy(told: Told, marked?: Look['marked']): Copy {
    const { settings } = told.job.episode;
    const { neighbours, lent } = told.compiled.surroundings;
    // The one place in which the look of a cut is made.
    const look: Look = {
      settings,
      metrics: this.fonts.metrics,
      stamp: stamp(told),
      neighbours,
      lent,
      marked,
    };
    return { told, look, input: this.input(told, look) };
  }

  /** The same with nothing marked. */
  plain(copy: Copy): Copy {
    return copy.look.marked ? this.copy(copy.told) : copy;
  }

  lay(copy: Copy): Laid {
    const { told, look } = copy;
    const printed = printedCut(told.solved, look, this.choice);
    const pages = printed.parts.flatMap((part) =>
      part.pages.map(
        (page): PrintedPage => ({
          label: page.label,
          hash: this.fingerprints.of(page, look.stamp),
          here: true,
        }),
      ),
    );
    return { copy, printed, pages };
  }

  /** A cut, or some pages of it, as a PDF. */
  cut({ copy }: Laid, printed: Printed, record: string): Promise<Uint8Array> {
    const { told, look } = copy;
    const document = bindCut(printed, {
      title: documentTitle(told.solved, printed),
      author: told.solved.shot.artists.join(', '),
      language: look.settings.labels,
    });
    return printPdf(document, this.fonts, record);
  }

  print(document: Document): Promise<Uint8Array> {
    return printPdf(document, this.fonts);
  }

  private input({ compiled, solved }: Told, { metrics: _, stamp: __, ...look }: Look): string {
    const { artists } = solved.shot;
    const all = [PROGRAM, compiled.digest, artists, look, this.choice];
    return createHash('sha256').update(JSON.stringify(all)).digest('base64url').slice(0, 16);
  }
}

/** Tells two paper copies apart: a hash of what the cut says, and the commit that it stands on. */
function stamp({ host, compiled, job }: Told): string {
  const { digest } = compiled;
  const commit = host.commit(job.path === null ? host.cwd : dirname(job.path));
  return commit ? `${digest} · ${commit}` : digest;
}

export function blankDocument(pages: Document['pages'], settings: Settings): Document {
  const title = [workTitle(settings), WORDS[settings.labels].documents.blankForms]
    .filter(Boolean)
    .join(' · ');
  return { title, author: '', language: settings.labels, pages, bookmarks: [], trueSize: false };
}
