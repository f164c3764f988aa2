/** Links between the documents lead to files that are there, and to headings that are there. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { statementPages } from '../src/reference/statement-pages.js';

const documents = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync('grammar', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => posix.join('grammar', name)),
];

/** The text without code that is set apart. */
const prose = (file: string): string => readFileSync(file, 'utf8').replace(/^```[\s\S]*?^```$/gm, '');

const anchors = new Map<string, Set<string>>();
/** The anchors of a document's headings: small letters, blanks as hyphens, other signs left out. */
function anchorsOf(file: string): Set<string> {
  const known = anchors.get(file);
  if (known) return known;
  const made = new Set(
    [...prose(file).matchAll(/^#+ (.*)$/gm)].map(([, heading]) =>
      heading!
        .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
        .toLowerCase()
        .replace(/[^\p{L}\p{N} _-]/gu, '')
        .replaceAll(' ', '-'),
    ),
  );
  anchors.set(file, made);
  return made;
}

function broken(from: string, link: string): boolean {
  const [path, hash] = link.split('#') as [string, string | undefined];
  const to = path === '' ? from : posix.join(posix.dirname(from), path);
  if (!existsSync(to)) return true;
  return hash !== undefined && !anchorsOf(to).has(hash);
}

test.each(documents)('the links of %s', (file) => {
  const links = [
    ...prose(file)
      .replace(/`[^`\n]*`/g, '')
      .matchAll(/\]\(([^)\s]+)\)/g),
  ].map(([, link]) => link!);
  expect(links.filter((link) => !/^[a-z]+:/.test(link) && broken(file, link))).toEqual([]);
});

test('the subject of every statement is a section of its page', () => {
  const subjects = Object.values(statementPages).map(({ subject }) => subject);
  expect(subjects.filter((subject) => broken('grammar/README.md', subject))).toEqual([]);
});

test('a link to no file, and one to no heading, are noticed', () => {
  expect(['grammar/none.md', 'grammar/time.md#none'].map((link) => broken('README.md', link))).toEqual([
    true,
    true,
  ]);
  expect(broken('grammar/light.md', 'camera.md#pan')).toBe(false);
});
