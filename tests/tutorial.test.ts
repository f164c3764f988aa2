/**
 * The tutorial is walked in order, in one folder: each text is saved as its file, each command typed, each picture printed of
 * what is in the file by then. UPDATE=1 writes the answers, the texts that the program wrote itself, and the pictures.
 */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { main } from '../src/command/main.js';
import { memoryHost } from '../src/host/memory-host.js';
import { compileText } from './compile.js';
import { type Crop, kept, picture } from './pictures.js';

const PAGE = 'grammar/tutorial.md';
const FILE = 'c001.cut';

const PICTURES: Readonly<Record<string, Crop>> = {
  head: 'head',
  keys: { rows: [1, 51] },
  cycle: { rows: [25, 60] },
  dialogue: { rows: [43, 72] },
  camera: 'chart',
  retime: { rows: [25, 72] },
};

test('the tutorial does what it says, and ends with a printed cut', async () => {
  const page = readFileSync(PAGE, 'utf8');
  const files = new Map<string, Uint8Array>();
  const shown = new Set<string>();
  const text = (): string => new TextDecoder().decode(files.get(FILE));
  const parts: string[] = [];
  let end = 0;
  for (const found of page.matchAll(
    /^```(cut|console)([^\n]*)\n([\s\S]*?)^```$|^!\[[^\]]*\]\(pictures\/tutorial\/(\w+)\.svg\)$/gm,
  )) {
    const [whole, kind, words, body = '', name] = found;
    parts.push(page.slice(end, found.index));
    end = found.index + whole.length;
    if (name !== undefined) {
      const svg = picture(compileText(text()).solved!, PICTURES[name]!);
      const [is, should] = kept(`grammar/pictures/tutorial/${name}.svg`, svg);
      expect(is, name).toBe(should);
      expect(svg.length).toBeLessThan(60_000);
      shown.add(name);
      parts.push(whole);
    } else if (kind === 'console') {
      parts.push(`\`\`\`console\n${await typed(body, files)}\`\`\``);
    } else {
      if (words !== ' written') files.set(FILE, new TextEncoder().encode(body));
      parts.push(`\`\`\`cut${words}\n${text()}\`\`\``);
    }
  }
  const [is, should] = kept(PAGE, parts.join('') + page.slice(end));
  expect(is).toBe(should);
  expect([...shown].sort()).toEqual(Object.keys(PICTURES).sort());
  expect(files.has('c001.pdf')).toBe(true);
  expect(compileText(text()).diagnostics).toEqual([]);
});

/** Types the commands of a piece of the page, and gives it back with the answers. */
async function typed(body: string, files: Map<string, Uint8Array>): Promise<string> {
  let said = '';
  for (const [line, args] of body.matchAll(/^\$ npx cutwright (.*)$/gm)) {
    const host = memoryHost(Object.fromEntries(files));
    await main(args!.split(' '), host);
    for (const [path, bytes] of host.files) files.set(path.replace(/^\/work\//, ''), bytes);
    said += `${line}\n${(host.complaints() + host.printed()).replaceAll('\r\n', '\n')}`;
  }
  return said;
}
