import { expect, test } from 'vitest';
import { type DocumentParts, documentParts } from '../../src/print/document-parts.js';
import { PdfObjects } from '../../src/print/pdf-objects.js';

/** The objects that were written, by their numbers. */
function written(changes: Partial<DocumentParts>) {
  const pieces: Uint8Array[] = [];
  const objects = new PdfObjects((bytes) => void pieces.push(Uint8Array.from(bytes)));
  const tree = objects.next();
  const pages = ['1', '2'].map((label) => ({ id: objects.next(), label }));
  const { root, info } = documentParts(objects, {
    ...{ title: '', language: 'en', author: '', bookmarks: [], trueSize: false, tree, pages },
    ...changes,
  });
  objects.end(root, info, new Uint8Array(16));
  const file = Buffer.concat(pieces).toString('latin1');
  const found = new Map(
    [...file.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body]) => [Number(id), body!]),
  );
  return { catalog: found.get(root)!, info: found.get(info)!, found };
}

test('a file without a title or an outline says nothing of them', () => {
  const { catalog, info } = written({});
  expect(catalog).toContain('/Pages 1 0 R\n/Lang (en)');
  expect(catalog).toMatch(/\/Nums \[0 << \/P \(1\) >>\s1 << \/P \(2\) >>\]/);
  expect(catalog).not.toMatch(/Outlines|ViewerPreferences/);
  expect(info).toBe('<<\n/Creator (cutwright)\n/Producer (cutwright)\n>>');
});

test('branches of the outline are chained, and know their parents', () => {
  const leaf = (title: string, page: number) => ({ title, page, children: [] });
  const { catalog, found } = written({
    bookmarks: [{ title: 'Cut 1', page: 0, children: [leaf('a', 0), leaf('b', 1)] }, leaf('Cut 2', 1)],
  });
  const number = (body: string, key: string) => Number(new RegExp(`/${key} (\\d+) 0 R`).exec(body)?.[1]);
  const root = number(catalog, 'Outlines');
  const first = number(found.get(root)!, 'First');
  const second = number(found.get(first)!, 'Next');
  expect(number(found.get(root)!, 'Last')).toBe(second);
  expect([number(found.get(second)!, 'Prev'), number(found.get(second)!, 'Parent')]).toEqual([first, root]);
  const [a, b] = [number(found.get(first)!, 'First'), number(found.get(first)!, 'Last')];
  expect(number(found.get(a)!, 'Next')).toBe(b);
  expect(found.get(b)).toBe(`<<\n/Title (b)\n/Parent ${first} 0 R\n/Prev ${a} 0 R\n/Dest [3 0 R /Fit]\n>>`);
});

test('a bookmark that leads to no page is refused', () => {
  expect(() => written({ bookmarks: [{ title: 'Lost', page: 2, children: [] }] })).toThrow(
    'the bookmark “Lost” leads to page 2 of 2',
  );
});

test('true size, title, author and private words are told', () => {
  const { catalog, info, found } = written({ title: 'A (b)', author: '新井', trueSize: true, record: '1;x' });
  expect(catalog).toContain('/ViewerPreferences << /DisplayDocTitle true /PrintScaling /None >>');
  const [, words] = /^<<\n\/CutwrightPrint (\d+) 0 R\n\/Title \(A \\\(b\\\)\)\n\/Author <feff65b04e95>/.exec(
    info,
  )!;
  expect(found.get(Number(words))).toBe('(1;x)');
});
