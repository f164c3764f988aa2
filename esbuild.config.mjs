/**
 * Builds what is shipped into dist/: the program as a split ESM bundle, so that a command loads only what it needs, and
 * the font with its licence.
 */
import { cpSync, mkdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = dirname(fileURLToPath(import.meta.url));
const dist = join(root, 'dist');

rmSync(dist, { recursive: true, force: true });
await build({
  absWorkingDir: root,
  entryPoints: { cutwright: 'src/command/main.ts', host: 'src/host/node.ts' },
  outdir: dist,
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
  // Some dependencies are CommonJS and call require for what Node brings.
  banner: {
    js: "import { createRequire as cutwrightRequire } from 'node:module';const require=cutwrightRequire(import.meta.url);",
  },
});

const font = join(dist, 'font');
const source = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans-jp/package.json'),
);
mkdirSync(font);
cpSync(join(source, '400Regular/NotoSansJP_400Regular.ttf'), join(font, 'NotoSansJP-Regular.ttf'));
cpSync(join(source, '700Bold/NotoSansJP_700Bold.ttf'), join(font, 'NotoSansJP-Bold.ttf'));
cpSync(join(source, 'LICENSE_FONT'), join(font, 'LICENSE.txt'));
