/** The tour of the README is walked: its texts are typed, its commands run, and what they print is what stands there. */

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { cutPages } from '../src/build/printed-parts.js';
import { main } from '../src/command/main.js';
import { memoryHost } from '../src/host/memory-host.js';
import { compileText } from './compile.js';
import { testFonts } from './fonts.js';
import { cropped, kept } from './pictures.js';

const FILE = 'out/c041.cut';
const readme = readFileSync('README.md', 'utf8');
const steps = [...readme.matchAll(/^```(cut|console)\n([\s\S]*?)^```$/gm)].map(([, kind, text]) => ({
  kind,
  text: text!,
}));

test('the tour does what it says', async () => {
  let typed = '';
  let walked = 0;
  for (const { kind, text } of steps) {
    if (kind === 'cut') {
      typed = type(typed, text);
      continue;
    }
    const [command, ...expected] = text.trimEnd().split('\n');
    const host = memoryHost({ [FILE]: typed });
    const args = /^\$ npx cutwright (.*)$/.exec(command!)![1]!.split(' ');
    await main(args, host);
    const printed = (host.complaints() + host.printed()).replaceAll('\r\n', '\n').trimEnd().split('\n');
    if (expected.at(-1) === '…') expect(printed.slice(0, expected.length - 1)).toEqual(expected.slice(0, -1));
    else expect(printed).toEqual(expected);
    // A command may have written in the text.
    typed = Buffer.from(host.files.get(`/work/${FILE}`)!).toString('utf8');
    walked += 1;
  }
  expect(walked).toBe(6);
});

/** The episodes that the tour names, by path. */
const examples = Object.fromEntries(
  ['saltmarsh', 'voices'].flatMap((folder) =>
    readdirSync(`examples/${folder}`, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(cut|yaml|wav)$/.test(name))
      .map((name) => [`examples/${folder}/${name}`, readFileSync(`examples/${folder}/${name}`)]),
  ),
);

test('the other commands that it offers are right, too', async () => {
  const mended = typedUpTo(2);
  const offered = [...readme.matchAll(/^\| `npx cutwright ([^`]*)` \|/gm)].map(([, line]) =>
    line!.split(' '),
  );
  expect(offered.length).toBeGreaterThan(15);
  for (const args of offered) {
    const host = memoryHost({ [FILE]: mended, ...examples });
    // The same film, small and short.
    if (args[0] === 'shoot') args.push('--size', '160x90', '--to', '12');
    // Two versions differ, which is what `compare` leaves with.
    expect(await main(args, host), host.complaints()).toBe(args[0] === 'compare' ? 1 : 0);
  }
});

test('the mended cut has seventeen drawings, and one more in the end', () => {
  expect(compileText(typedUpTo(2)).solved!.counts.drawings).toBe(17);
  expect(compileText(typedUpTo(3)).solved!.counts.drawings).toBe(18);
});

test('its pictures are those of its cut (UPDATE=1 writes them)', () => {
  const pages = (texts: number) => {
    const { metrics } = testFonts();
    const { solved } = compileText(typedUpTo(texts));
    const look = { settings: solved!.shot.settings, metrics, stamp: '' };
    return cutPages(solved!, look, { parts: 'needed' }).parts.flatMap(({ pages }) => pages);
  };
  const [sheet] = pages(2);
  const chart = pages(4).find(({ part }) => part === 'camera');
  for (const [name, page, box] of [
    ['sheet', sheet, { x: 4, y: 4, width: 202, height: 125 }],
    ['camera', chart, { x: 4, y: 24, width: 289, height: 152 }],
  ] as const) {
    const [is, should] = kept(`grammar/pictures/${name}.svg`, cropped(page!, box));
    expect(is, name).toBe(should);
  }
});

test('what its commands write lies where git does not look', () => {
  const written = [...readme.matchAll(/--output (\S+)|new episode (\S+)/g)].map(
    ([, output, episode]) => (output ?? episode)!,
  );
  expect(written.length).toBeGreaterThan(6);
  expect(written.filter((path) => !path.startsWith('out/'))).toEqual([]);
  expect(readFileSync('.gitignore', 'utf8').split('\n')).toContain('out/');
});

/** What stands in the file after the first `count` texts of the tour. */
function typedUpTo(count: number): string {
  return steps
    .filter(({ kind }) => kind === 'cut')
    .slice(0, count)
    .reduce((typed, { text }) => type(typed, text), '');
}

/** A single line takes the place of the line that begins with the same word, or is added. */
function type(typed: string, text: string): string {
  if (typed === '') return text;
  const word = text.split(' ')[0]!;
  const lines = typed.split('\n');
  const at = lines.findIndex((one) => one.startsWith(`${word} `));
  return at < 0 ? typed + text : lines.with(at, text.trimEnd()).join('\n');
}
