/** All that is needed for printing and for nothing else; loaded only when there is something to print. */

import { dirname } from 'node:path';
import type { Compiled } from '../episode/compile.js';
import type { Job } from '../episode/find.js';
import type { Host } from '../host/host.js';
import { type Fonts, openFonts } from '../print/fonts.js';
import { printPdf } from '../print/pdf.js';
import type { Document } from '../sheet/marks.js';
import type { Settings } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved.js';
import { bindDocument, type Choice, documentTitle, pageCount, printedCut } from './document.js';

export class Press {
  private constructor(
    private readonly host: Host,
    readonly fonts: Fonts,
  ) {}

  /** Throws where the installation has lost its font. */
  static open(host: Host): Press {
    const [regular, bold] = [host.font('regular'), host.font('bold')];
    if (!regular.ok) throw new Error(`the font of the installation cannot be read: ${regular.reason}`);
    if (!bold.ok) throw new Error(`the font of the installation cannot be read: ${bold.reason}`);
    return new Press(host, openFonts(regular.value, bold.value));
  }

  /** One cut as a PDF; null where nothing of it was chosen. `pages` is what is printed, `of` what there was. */
  async cut(
    solved: SolvedShot,
    compiled: Compiled,
    job: Job,
    choice: Choice,
  ): Promise<{ bytes: Uint8Array; pages: number } | null> {
    const { settings } = job.episode;
    const look = { settings, metrics: this.fonts.metrics, stamp: this.stamp(compiled, job) };
    const printed = printedCut(solved, look, choice);
    const pages = pageCount(printed);
    if (pages === 0) return null;
    const document = bindDocument([printed], {
      title: documentTitle(solved, printed),
      author: solved.shot.artists.join(', '),
      language: settings.labels,
    });
    return { bytes: await this.print(document), pages };
  }

  print(document: Document): Promise<Uint8Array> {
    return printPdf(document, this.fonts);
  }

  /** Tells two paper copies apart: a hash of what the cut says, and the commit that it stands on. */
  private stamp({ digest }: Compiled, job: Job): string {
    const commit = this.host.commit(job.path === null ? this.host.cwd : dirname(job.path));
    return commit ? `${digest} · ${commit}` : digest;
  }
}

export function blankDocument(pages: Document['pages'], settings: Settings): Document {
  const ja = settings.labels === 'ja';
  const work = [settings.title, settings.episode].filter(Boolean).join(' ');
  const title = [work, ja ? '用紙' : 'Blank forms'].filter(Boolean).join(' · ');
  return { title, author: '', language: settings.labels, pages, bookmarks: [], trueSize: false };
}
