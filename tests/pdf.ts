import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { type Paper, read } from './paper.js';

export type * from './paper.js';

/** A branch of the outline; `page` is an index into the pages. */
export interface Branch {
  readonly title: string;
  readonly page: number;
  readonly children: readonly Branch[];
}

/** A printed document, read back from its bytes by pdf.js. */
export interface Printed {
  readonly title: string;
  readonly author: string;
  readonly language: string;
  readonly labels: readonly string[];
  readonly outline: readonly Branch[];
  /** Whether the file asks for printing without any scaling. */
  readonly trueSize: boolean;
  readonly pages: readonly Paper[];
}

type Loaded = Awaited<ReturnType<typeof getDocument>['promise']>;
type Node = Awaited<ReturnType<Loaded['getOutline']>>[number];

/** Opens a PDF and reads everything that is on its pages. Throws at any operator that it does not know. */
export async function openPrinted(bytes: Uint8Array): Promise<Printed> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const pdf = await task.promise;
  try {
    const { info } = await pdf.getMetadata();
    const { Title = '', Author = '', Language = '' } = info as Record<string, string>;
    const preferences = (await pdf.getViewerPreferences()) as { PrintScaling?: string } | null;
    const labels = (await pdf.getPageLabels()) ?? [];
    const pages: Paper[] = [];
    for (let number = 1; number <= pdf.numPages; number++) {
      const page = await pdf.getPage(number);
      const { fnArray, argsArray } = await page.getOperatorList();
      const [left, bottom, right, top] = page.view as [number, number, number, number];
      pages.push(
        read({
          operators: fnArray.map((code, i) => named(code, argsArray[i] ?? [])),
          box: [left, bottom, right, top],
          label: labels[number - 1] ?? '',
          fontName: (id) => (page.commonObjs.get(id) as { name: string }).name,
        }),
      );
    }
    return {
      title: Title,
      author: Author,
      language: Language,
      labels,
      outline: await branches(pdf, (await pdf.getOutline()) ?? []),
      trueSize: preferences?.PrintScaling === 'None',
      pages,
    };
  } finally {
    await task.destroy();
  }
}

const NAMES = new Map(Object.entries(OPS).map(([name, code]) => [code, name]));

function named(code: number, args: readonly unknown[]): { name: string; args: readonly unknown[] } {
  const name = NAMES.get(code)!;
  return name === 'constructPath'
    ? { name, args: [NAMES.get(args[0] as number), ...args.slice(1)] }
    : { name, args };
}

async function branches(pdf: Loaded, nodes: readonly Node[]): Promise<Branch[]> {
  const found: Branch[] = [];
  for (const { title, dest, items } of nodes) {
    const target = (dest as unknown[])[0] as { num: number; gen: number };
    found.push({ title, page: await pdf.getPageIndex(target), children: await branches(pdf, items) });
  }
  return found;
}
