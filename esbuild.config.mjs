/**
 * Builds what is shipped into dist/: the program as one bundle with code caches for a quick start, the library (src/index.ts), the page of the live view, the
 * font, and the licences of all that is in it. `node esbuild.config.mjs [FOLDER]` builds elsewhere.
 */
import { cpSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync } from 'node:zlib';
import { build } from 'esbuild';
import { bundledLicences } from './scripts/bundled-licences.mjs';

const require = createRequire(import.meta.url);
const { pageBundle } = require('./scripts/page-bundle.cjs');
const { sourcesHash } = require('./scripts/sources-hash.cjs');
const root = dirname(fileURLToPath(import.meta.url));
const dist = resolve(process.argv[2] ?? join(root, 'dist'));
/** Built here, then renamed, so that a program that runs meanwhile finds the old files or the new ones. */
const fresh = join(root, 'node_modules', `.cutwright-${process.pid}`);

/**
 * A function that is asked only for text outside ASCII, with tables and patterns that are made when its module is first run: it is
 * run when it is first asked, which takes a sixth off the start of a check.
 */
const whenAsked = {
  name: 'when-asked',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^string-width$/ }, ({ path, namespace }) =>
      namespace === 'when-asked' ? undefined : { path, namespace: 'when-asked' },
    );
    onLoad({ filter: /.*/, namespace: 'when-asked' }, ({ path }) => ({
      contents: `let ask; export default (text) => (ask ??= require(${JSON.stringify(path)}).default)(text);`,
      resolveDir: root,
    }));
  },
};

/** Functions of Node's own modules that a check does not call: these modules take a third of its start to load, so they are loaded when called. */
const BUILT_IN = {
  child_process: ['spawn', 'spawnSync'],
  crypto: ['createHash', 'randomBytes', 'timingSafeEqual'],
  module: ['createRequire'],
  os: ['availableParallelism', 'hostname', 'tmpdir'],
  v8: ['setFlagsFromString'],
  zlib: ['brotliDecompressSync', 'deflateSync'],
};
const builtInWhenCalled = {
  name: 'built-in-when-called',
  setup({ onResolve, onLoad }) {
    const filter = new RegExp(`^node:(${Object.keys(BUILT_IN).join('|')})$`);
    onResolve({ filter }, ({ path, importer, namespace }) => {
      // An import of a name that is not listed fails the build; what packages take by `require` nobody checks, but for this one.
      const checked = importer.startsWith(join(root, 'src')) || importer.includes('/node_modules/commander/');
      return namespace !== 'when-called' && checked ? { path, namespace: 'when-called' } : undefined;
    });
    onLoad({ filter: /.*/, namespace: 'when-called' }, ({ path }) => {
      const names = BUILT_IN[path.replace('node:', '')];
      const call = (name) =>
        `export const ${name} = (...given) => (own ??= require('${path}')).${name}(...given);`;
      return { contents: `let own;${names.map(call).join('')}`, resolveDir: root };
    });
  },
};

/** What only some runs need is a file of its own, so that no other run has to read it: the editor's server, and what is said in Japanese. */
const APART = {
  'lsp.cjs': 'src/lsp/stdio.ts',
  'messages-ja.cjs': 'src/language/catalogue/ja/index.ts',
  'reference-ja.cjs': 'src/reference/ja/reference-ja.ts',
  'help-ja.cjs': 'src/command/ja/help-texts-ja.ts',
};
const apart = {
  name: 'apart',
  setup({ onResolve, onLoad }) {
    for (const [file, entry] of Object.entries(APART)) {
      const module = entry.replace(/^src\/(.*)\.ts$/, '/$1.js');
      const ends = new RegExp(`${module.replaceAll('.', '\\.')}$`);
      onResolve({ filter: /\.js$/ }, ({ path, resolveDir, kind }) =>
        kind !== 'entry-point' && ends.test(join(resolveDir, path))
          ? { path: file, namespace: 'apart' }
          : undefined,
      );
    }
    onLoad({ filter: /.*/, namespace: 'apart' }, ({ path }) => ({
      contents: `const { dirname, join } = require('node:path'); module.exports = require(join(dirname(__filename), '${path}'));`,
    }));
  },
};

rmSync(fresh, { recursive: true, force: true });
const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  minify: true,
  // Only few packages have such comments; LEGAL.txt has the licences of all.
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
  define: { 'import.meta.url': 'bundleUrl', CUTWRIGHT_SOURCES: JSON.stringify(sourcesHash()) },
  banner: { js: "const bundleUrl=require('node:url').pathToFileURL(__filename).href;" },
  footer: { js: '// The licences of what is bundled here are in LEGAL.txt.' },
};
const metafiles = [];
const bundle = async (options) => metafiles.push((await build({ ...common, ...options })).metafile);
await bundle({
  stdin: {
    contents:
      "export { main } from './src/command/main.ts'; export { nodeHost } from './src/host/node-host.ts'; export const serveCuts = async (host, port) => (await import('./src/build/cut-worker.ts')).serveCuts(host, port);",
    resolveDir: root,
  },
  outfile: join(fresh, 'cutwright.cjs'),
  plugins: [apart, whenAsked, builtInWhenCalled],
});
for (const [file, entry] of Object.entries({ 'index.cjs': 'src/index.ts', ...APART }))
  await bundle({
    entryPoints: [entry],
    outfile: join(fresh, file),
    plugins: [apart, whenAsked, builtInWhenCalled],
  });

// bin/load.js reads the bundle a byte a character, which is quick; the bundler leaves letters of other scripts in expressions as they are.
for (const name of ['cutwright.cjs', 'index.cjs', ...Object.keys(APART)]) {
  const path = join(fresh, name);
  const escaped = (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  writeFileSync(path, readFileSync(path, 'utf8').replace(/[\u0080-\uffff]/g, escaped));
}
writeFileSync(
  join(fresh, 'LEGAL.txt'),
  bundledLicences(root, metafiles, ['node_modules/cmu-pronouncing-dictionary']) +
    readFileSync(join(root, 'scripts/cmu-dictionary-licence.txt'), 'utf8'),
);
mkdirSync(join(fresh, 'page'));
for (const name of ['live.html', 'live.css', 'live.js'])
  cpSync(join(root, 'src/preview/page', name), join(fresh, 'page', name));
writeFileSync(join(fresh, 'page/page-modules.js'), pageBundle());

const font = join(fresh, 'font');
const source = dirname(require.resolve('@expo-google-fonts/noto-sans-jp/package.json'));
mkdirSync(font);
cpSync(join(source, '400Regular/NotoSansJP_400Regular.ttf'), join(font, 'NotoSansJP-Regular.ttf'));
cpSync(join(source, '700Bold/NotoSansJP_700Bold.ttf'), join(font, 'NotoSansJP-Bold.ttf'));
cpSync(join(source, 'LICENSE_FONT'), join(font, 'LICENSE.txt'));
await writeLatinFonts();
await writeEnglishWords();

const { script, program } = require('./bin/load.js').load(fresh);
const written = { ok: true, value: null };
const silent = {
  ...program.nodeHost(),
  out() {},
  error() {},
  write: () => written,
  writeLater: async () => written,
};
for (const [command, cache] of [
  ['check', 'read.cache'],
  ['build', 'print.cache'],
]) {
  await program.main([command, join(root, 'examples/saltmarsh/cuts/c001.cut')], silent);
  writeFileSync(join(fresh, cache), script.createCachedData());
}

rmSync(dist, { recursive: true, force: true });
mkdirSync(dirname(dist), { recursive: true });
renameSync(fresh, dist);

/** The part of the font that is in nearly every file, ready to be copied into it. */
async function writeLatinFonts() {
  const { outputFiles } = await build({
    absWorkingDir: root,
    stdin: {
      contents: "export * from './src/print/latin-font.ts'; export * from './src/print/truetype-font.ts';",
      resolveDir: root,
    },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
  });
  const made = Buffer.from(outputFiles[0].contents).toString('base64');
  const { latinFont, latinFontsFile, TrueTypeFont } = await import(`data:text/javascript;base64,${made}`);
  const [regular, bold] = ['Regular', 'Bold'].map((weight) =>
    latinFont(new TrueTypeFont(readFileSync(join(font, `NotoSansJP-${weight}.ttf`))), `NotoSansJP-${weight}`),
  );
  writeFileSync(join(font, 'latin.json'), latinFontsFile({ regular, bold }));
}

/** How English words are pronounced, packed. */
async function writeEnglishWords() {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: ['src/host/shipped-files.ts'],
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
  });
  const { englishWordsOf } = await import(
    `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`
  );
  const words = englishWordsOf(readFileSync(require.resolve('cmu-pronouncing-dictionary'), 'utf8'));
  writeFileSync(join(fresh, 'english-words.br'), brotliCompressSync(words));
}
