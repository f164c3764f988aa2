/**
 * Packs the extension into one file that VS Code installs: `node grammar/editors/vscode/package.mjs [FILE]`. Nothing is
 * fetched. The file is a zip of the parts that the Open Packaging Conventions ask for (ECMA-376, part 2): the list of content
 * types, the manifest, and the extension's own files. The same sources give the same bytes.
 */

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { zipSync } from 'fflate';
import { bundledLicences } from '../../../scripts/bundled-licences.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, '../../..');
const about = JSON.parse(readFileSync(join(here, 'package.json'), 'utf8'));
const target = resolve(process.argv[2] ?? join(root, 'out', `${about.name}-${about.version}.vsix`));

const { outputFiles, metafile } = await build({
  absWorkingDir: root,
  entryPoints: [join(here, 'extension.ts')],
  outdir: '/extension',
  write: false,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  external: ['vscode'],
  minify: true,
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
});

const escaped = (text) => text.replace(/[<>&"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
const asset = (type, path) => `<Asset Type="${type}" Path="extension/${path}" Addressable="true" />`;
const manifest = `<?xml version="1.0" encoding="utf-8"?>
<PackageManifest Version="2.0.0" xmlns="http://schemas.microsoft.com/developer/vsx-schema/2011">
  <Metadata>
    <Identity Language="en-US" Id="${escaped(about.name)}" Version="${about.version}" Publisher="${escaped(about.publisher)}" />
    <DisplayName>${escaped(about.displayName)}</DisplayName>
    <Description xml:space="preserve">${escaped(about.description)}</Description>
    <Tags>${escaped(about.keywords.join(','))}</Tags>
    <Categories>${escaped(about.categories.join(','))}</Categories>
    <Properties>
      <Property Id="Microsoft.VisualStudio.Code.Engine" Value="${escaped(about.engines.vscode)}" />
    </Properties>
    <License>extension/LICENSE.txt</License>
  </Metadata>
  <Installation><InstallationTarget Id="Microsoft.VisualStudio.Code" /></Installation>
  <Dependencies />
  <Assets>
    ${asset('Microsoft.VisualStudio.Code.Manifest', 'package.json')}
    ${asset('Microsoft.VisualStudio.Services.Content.Details', 'README.md')}
    ${asset('Microsoft.VisualStudio.Services.Content.License', 'LICENSE.txt')}
  </Assets>
</PackageManifest>
`;

const TYPES = {
  js: 'application/javascript',
  json: 'application/json',
  md: 'text/markdown',
  txt: 'text/plain',
  vsixmanifest: 'text/xml',
};
const types = Object.entries(TYPES).map(
  ([ending, type]) => `<Default Extension=".${ending}" ContentType="${type}" />`,
);
const contentTypes = `<?xml version="1.0" encoding="utf-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${types.join('')}</Types>
`;

const read = (path) => readFileSync(path);
const files = {
  '[Content_Types].xml': Buffer.from(contentTypes),
  'extension.vsixmanifest': Buffer.from(manifest),
  'extension/package.json': read(join(here, 'package.json')),
  'extension/README.md': read(join(here, 'README.md')),
  'extension/LICENSE.txt': read(join(root, 'LICENSE')),
  'extension/language-configuration.json': read(join(here, 'language-configuration.json')),
  'extension/cutwright.tmLanguage.json': read(join(here, '../cutwright.tmLanguage.json')),
  'extension/pages-view.js': read(join(here, 'pages-view.js')),
  'extension/extension.js': outputFiles[0].contents,
  'extension/third-party.txt': Buffer.from(bundledLicences(root, [metafile])),
};
mkdirSync(dirname(target), { recursive: true });
writeFileSync(target, zipSync(files, { level: 9, mtime: new Date(1980, 0, 1) }));
process.stdout.write(`${target}\n`);
