/** Names of drawings, as typed in timelines and `cels` lines. */

/** A key's name; leading zeros do not count. */
export function keyName(image: string): string {
  return image.normalize('NFC').replace(/^0+(?=\d)/, '');
}

export interface InPassage {
  readonly key: string;
  readonly to: string | null;
  readonly index: number;
  readonly letter: string;
}

/** The name of an in-between: `1.2`, `1.1a`; with `from` typed before a `>`, as in `1>3.2`, it starts with the later key. */
export function betweenName(image: string, from: string | null = null): InPassage {
  const [, key = '', index = '', letter = ''] = /^(\d+(?:\p{L}\p{M}*)?)\.(\d+)([a-z]?)$/u.exec(image) ?? [];
  const named = keyName(key);
  return { key: from ?? named, to: from === null ? null : named, index: Number(index), letter };
}
