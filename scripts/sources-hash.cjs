const { createHash } = require('node:crypto');
const { readdirSync, readFileSync } = require('node:fs');
const { join } = require('node:path');

const root = join(__dirname, '..');

/**
 * A short hash of all sources and of the packages that they use: what the program puts into its prints, to know later whether
 * the same program would print the same. A test run tells it to the bundles that its tests build.
 */
exports.sourcesHash = function sourcesHash() {
  const { CUTWRIGHT_SOURCES: told } = process.env;
  if (told) return told;
  const hash = createHash('sha256');
  const names = readdirSync(join(root, 'src'), { recursive: true })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join('src', name))
    .sort();
  for (const name of [...names, 'package-lock.json']) {
    const text = readFileSync(join(root, name), 'utf8').replaceAll('\r\n', '\n');
    hash.update(`${name.replaceAll('\\', '/')} ${text.length} `).update(text);
  }
  return hash.digest('base64url').slice(0, 12);
};
