/** The licences of all packages that went into bundles, as one text to lie beside them. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** `metafiles`: what esbuild says of each bundle; `others`: folders of packages whose data is shipped. Throws where a package has no licence. */
export function bundledLicences(root, metafiles, others = []) {
  return [...bundledPackages(metafiles), ...others]
    .map((folder) => licenceOf(root, folder))
    .join(`\n${'-'.repeat(80)}\n\n`);
}

/** Folders of packages of which something is in a bundle, sorted. */
export function bundledPackages(metafiles) {
  const paths = metafiles.flatMap(({ outputs }) =>
    Object.values(outputs).flatMap(({ inputs }) =>
      Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
    ),
  );
  return [
    ...new Set(paths.flatMap((path) => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? [])),
  ].sort();
}

function licenceOf(root, folder) {
  const { name, version, license, author } = JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));
  const texts = readdirSync(join(root, folder))
    .filter((file) => /^(?:licen[sc]e|copying|notice)/i.test(file))
    .sort()
    .map((file) => readFileSync(join(root, folder, file), 'utf8').trim());
  if (texts.length === 0) {
    // Some packages say that they are under the MIT licence, and bring no text. Ours has its words.
    const by = typeof author === 'string' ? author : author?.name;
    if (license !== 'MIT' || !by) throw new Error(`${folder} has no licence`);
    const words = readFileSync(join(root, 'LICENSE'), 'utf8').replace(/^Copyright.*$/m, `Copyright (c) ${by}`);
    texts.push(words.trim());
  }
  return `${name} ${version}\n\n${texts.join('\n\n')}\n`;
}
