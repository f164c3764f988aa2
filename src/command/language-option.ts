/** `--language` on a command line: read before anything else, since faults of the line itself are told in it. */

import type { Host } from '../host/host.js';

const LANGUAGE = '--language';

/** The same world, whose user speaks the language that the command line says, wherever on the line that is. */
export function inLanguage(host: Host, argv: readonly string[]): Host {
  const at = argv.findIndex((word) => word === LANGUAGE || word.startsWith(`${LANGUAGE}=`));
  if (at < 0) return host;
  const asked = argv[at] === LANGUAGE ? argv[at + 1] : argv[at]!.slice(LANGUAGE.length + 1);
  return { ...host, env: (name) => (name === 'CUTWRIGHT_LANGUAGE' ? asked : host.env(name)) };
}

/** It may stand before the command as well, and is moved to the end. */
export function languageBehind(argv: readonly string[]): readonly string[] {
  const [first, ...rest] = argv;
  if (first?.startsWith(`${LANGUAGE}=`)) return rest.length === 0 ? [] : [...rest, first];
  if (first !== LANGUAGE || rest.length === 0) return argv;
  return rest.length === 1 ? [] : [...rest.slice(1), LANGUAGE, rest[0]!];
}
