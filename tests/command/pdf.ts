import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Branch {
  readonly title: string;
  readonly page: number;
  readonly children: readonly Branch[];
}

/** What an independent reader finds in a PDF. */
export interface Looked {
  readonly title: string;
  readonly author: string;
  readonly language: string;
  readonly labels: readonly string[];
  /** Width and height of each page, points. */
  readonly sizes: readonly (readonly number[])[];
  /** All text of each page. */
  readonly texts: readonly string[];
  readonly outline: readonly Branch[];
}

/** `texts: false` leaves them out: reading them takes most of the time. */
export async function lookInto(bytes: Uint8Array, { texts: wanted = true } = {}): Promise<Looked> {
  const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
  const pdf = await task.promise;
  try {
    const info = (await pdf.getMetadata()).info as Record<string, string>;
    const sizes: number[][] = [];
    const texts: string[] = [];
    for (let i = 1; i <= pdf.numPages; i++) {
      const page = await pdf.getPage(i);
      const [left, bottom, right, top] = page.view;
      sizes.push([right! - left!, top! - bottom!]);
      if (!wanted) continue;
      const { items } = await page.getTextContent();
      texts.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
    }
    type Item = Awaited<ReturnType<typeof pdf.getOutline>>[number];
    const branch = async ({ title, dest, items }: Item): Promise<Branch> => ({
      title,
      page: await pdf.getPageIndex((dest as [never])[0]),
      children: await Promise.all(items.map(branch)),
    });
    return {
      title: info.Title ?? '',
      author: info.Author ?? '',
      language: info.Language ?? '',
      labels: (await pdf.getPageLabels()) ?? [],
      sizes,
      texts,
      outline: await Promise.all(((await pdf.getOutline()) ?? []).map(branch)),
    };
  } finally {
    await task.destroy();
  }
}
