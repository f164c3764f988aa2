/**
 * Builds what is shipped into dist/: the program as a split ESM bundle, so that a command loads only what it needs, and
 * the font with its licence. `node esbuild.config.mjs [FOLDER]` builds elsewhere.
 */
import { cpSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = dirname(fileURLToPath(import.meta.url));
const dist = resolve(process.argv[2] ?? join(root, 'dist'));
/** Built here, then renamed, so that a program that runs meanwhile finds the old files or the new ones. */
const fresh = join(root, 'node_modules', `.cutwright-${process.pid}`);

/**
 * Parts of pdfkit and fontkit that printing marks does not reach: they set text glyph by glyph, without shaping, wrapping,
 * pictures or passwords, in a TrueType font. Most of it is tables that are unpacked at start-up. Where one is reached after
 * all, it says so instead of printing something wrong; a test compares the bundle's pages with those of the sources.
 */
const LEFT_OUT = {
  'brotli/decompress.js': ['default'],
  linebreak: ['default'],
  'png-js': ['default'],
  '@noble/ciphers/aes': ['cbc', 'ecb'],
  // Made at start-up, asked only by shaping.
  'unicode-trie': { default: 'class { get() { leftOut(); } }' },
  // Every glyph is asked whether it is a mark, which matters only to shaping.
  'unicode-properties': {
    isMark: '() => false',
    ...Object.fromEntries(
      ['getCategory', 'getCombiningClass', 'getScript', 'isDigit'].map((name) => [name, 'leftOut']),
    ),
  },
};

const leaveOut = {
  name: 'leave-out',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^[^./]/ }, ({ path }) =>
      Object.hasOwn(LEFT_OUT, path) ? { path, namespace: 'left-out', sideEffects: false } : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'left-out' }, ({ path }) => {
      const names = LEFT_OUT[path];
      const parts = Array.isArray(names) ? names.map((name) => [name, 'leftOut']) : Object.entries(names);
      const message = JSON.stringify(`${path} is left out of the bundle`);
      return {
        contents: [
          `function leftOut() { throw new Error(${message}); }`,
          ...parts.map(([name, value]) =>
            name === 'default' ? `export default ${value};` : `export const ${name} = ${value};`,
          ),
        ].join('\n'),
      };
    });
  },
};

/** What Node brings is required, not imported: importing `node:fs` loads all that its getters name, streams first. */
const requireBuiltins = {
  name: 'require-builtins',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /.*/ }, ({ path, kind, namespace }) => {
      if (!isBuiltin(path)) return undefined;
      return kind === 'import-statement' && namespace === 'file'
        ? { path, namespace: 'builtin', sideEffects: false }
        : { path, external: true };
    });
    onLoad({ filter: /.*/, namespace: 'builtin' }, ({ path }) => ({
      contents: `module.exports = require(${JSON.stringify(path)});`,
    }));
  },
};

rmSync(fresh, { recursive: true, force: true });
await build({
  absWorkingDir: root,
  entryPoints: { cutwright: 'src/command/main.ts', host: 'src/host/node.ts' },
  outdir: fresh,
  chunkNames: 'part-[hash]',
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'linked',
  logLevel: 'warning',
  plugins: [leaveOut, requireBuiltins],
  // Some dependencies are CommonJS and call require for what Node brings.
  banner: {
    js: "import { createRequire as cutwrightRequire } from 'node:module';const require=cutwrightRequire(import.meta.url);",
  },
});

const font = join(fresh, 'font');
const source = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans-jp/package.json'),
);
mkdirSync(font);
cpSync(join(source, '400Regular/NotoSansJP_400Regular.ttf'), join(font, 'NotoSansJP-Regular.ttf'));
cpSync(join(source, '700Bold/NotoSansJP_700Bold.ttf'), join(font, 'NotoSansJP-Bold.ttf'));
cpSync(join(source, 'LICENSE_FONT'), join(font, 'LICENSE.txt'));

rmSync(dist, { recursive: true, force: true });
mkdirSync(dirname(dist), { recursive: true });
renameSync(fresh, dist);
