import { createHash } from 'node:crypto';
import type { Settings } from '../shot/settings.js';

/** What changes the meaning of a cut, not its look: the same text on other paper keeps its stamp. */
const MEANING = [
  'title',
  'episode',
  'fps',
  'on',
  'numbering',
  'field',
  'fields',
  'artwork',
  'output',
  'scanDpi',
  'overlap',
] as const satisfies readonly (keyof Settings)[];

/**
 * A short hash of all that a cut says: its text, the files that it uses, the settings that matter and who draws it.
 * Line ends do not count, so that a checkout on another system has the same stamp.
 */
export function digest(texts: readonly string[], settings: Settings, artists: readonly string[]): string {
  const hash = createHash('sha256');
  const add = (text: string) => {
    const bytes = Buffer.from(text.replace(/\r\n?/g, '\n'), 'utf8');
    hash.update(`${bytes.length}:`).update(bytes);
  };
  for (const text of texts) add(text);
  add(JSON.stringify([MEANING.map((key) => settings[key]), artists]));
  return hash.digest('hex').slice(0, 10);
}
