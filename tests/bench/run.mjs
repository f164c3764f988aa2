/** `npm run bench`: measures what people wait for. Needs the bundle (the script builds it first). `-- --help` says which rows there are. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import v8 from 'node:v8';
import vm from 'node:vm';
import { build } from 'esbuild';
import { measureDraft } from './draft.mjs';
import { measureFormat } from './format.mjs';
import { writeEpisode } from './generated.mjs';
import { measureLive } from './live.mjs';
import { measureEditor } from './lsp.mjs';
import { report } from './measure.mjs';
import { measurePeers } from './peers.mjs';
import { measureSound } from './sound.mjs';
import { startup } from './startup.mjs';
import { measureTextToPdf } from './text-to-pdf.mjs';
import { measureWatch } from './watch.mjs';
import { measureEpisodes } from './whole.mjs';

const { load } = createRequire(import.meta.url)('../../bin/load.js');
const { main, nodeHost } = load(fileURLToPath(new URL('../../dist', import.meta.url))).program;

const BATCHES = 6;
const BATCH = 50;

v8.setFlagsFromString('--expose-gc');
const collect = vm.runInNewContext('gc');

/** Prints a folder of cuts in this process; the number of pages. */
async function print(folder, out) {
  const told = [];
  const host = { ...nodeHost(), error: (text) => told.push(text), out: (text) => told.push(text) };
  const status = await main(['build', folder, '--output', out], host);
  const pages = told.join('').match(/(\d+) pages/);
  if (status !== 0 || !pages) throw new Error(`build gave ${status}: ${told.join('')}`);
  return Number(pages[1]);
}

/** What the process holds on to after every batch of other cuts. */
async function memory(work) {
  const held = [];
  for (let batch = 0; batch < BATCHES; batch++) {
    const folder = join(work, `batch${batch}`);
    writeEpisode(folder, { cuts: BATCH, seed: 100 + batch });
    await print(folder, join(work, `out${batch}`));
    collect();
    const { heapUsed, external } = process.memoryUsage();
    held.push((heapUsed + external) / 2 ** 20);
  }
  const grown = held.at(-1) - held[1];
  report(
    `memory held after each ${BATCH} cuts`,
    `${held.map((one) => one.toFixed(1)).join(' ')} MB, ${grown >= 0 ? '+' : ''}${grown.toFixed(1)} from the second`,
    'flat',
  );
}

async function pages() {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const outfile = join(root, 'node_modules/.cache/cutwright/pages.mjs');
  await build({
    absWorkingDir: root,
    entryPoints: ['tests/bench/pages.mjs'],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    logLevel: 'warning',
    banner: {
      js: "import { createRequire as benchRequire } from 'node:module'; const require = benchRequire(import.meta.url);",
    },
  });
  const { printing } = await import(pathToFileURL(outfile));
  await measurePeers(await printing());
  rmSync(dirname(outfile), { recursive: true });
}

/** By the name that `--only` takes, in the order of the report. */
const ROWS = {
  start: ['check and build of one cut, from nothing', () => startup()],
  memory: ['memory held after cut upon cut', ({ work }) => memory(work)],
  pages: ['pages as PDF, beside a typesetter and a PDF library', () => pages()],
  format: ['formatting a text of 3,000 lines', ({ work }) => measureFormat({ main, nodeHost }, work)],
  tables: ['a table of exposures made into a cut', () => measureDraft({ main, nodeHost })],
  keystroke: ['a keystroke in an editor to its problems', () => measureEditor()],
  watch: ['a save to its PDF', () => measureWatch()],
  live: ['a save to the pixels of the live view', () => measureLive()],
  print: ['300 cuts from text to PDF', () => measureTextToPdf()],
  sound: ['listening to speech', () => measureSound(report)],
  episode: ['whole episodes, and again after an edit', ({ quick }) => measureEpisodes({ many: !quick })],
};

const HELP = `npm run bench -- [--quick] [--only ROW,ROW]

  --quick   leave out the episode of 3,000 cuts
  --only    measure these rows only:
${Object.entries(ROWS)
  .map(([name, [what]]) => `              ${name.padEnd(11)}${what}\n`)
  .join('')}`;

function options() {
  try {
    const { values } = parseArgs({
      options: { quick: { type: 'boolean' }, only: { type: 'string' }, help: { type: 'boolean' } },
    });
    const only = values.only?.split(',') ?? Object.keys(ROWS);
    const unknown = only.find((name) => !Object.hasOwn(ROWS, name));
    if (unknown !== undefined) throw new Error(`There is no row ${unknown}.`);
    return { ...values, only };
  } catch (fault) {
    console.error(`${fault.message}\n\n${HELP}`);
    process.exit(2);
  }
}

const { quick = false, help, only } = options();
if (help) {
  console.log(HELP);
  process.exit(0);
}
const work = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
try {
  for (const [name, [, measure]] of Object.entries(ROWS))
    if (only.includes(name)) await measure({ work, quick });
} finally {
  rmSync(work, { recursive: true, force: true });
}
