/** What was printed into a file, as the file itself tells it, so that a file and what is known of it never disagree. */

/** A page of a cut, by its label. */
export interface PrintedPage {
  readonly label: string;
  /** Short hash of what stands on it; null where it was not printed, as far as is known. */
  readonly hash: string | null;
  /** Whether it is in this file, or was in an earlier one. */
  readonly here: boolean;
}

export interface PrintedCut {
  /** Its number as it was written. */
  readonly cut: string;
  /** Hash of all that it was made of: equal ones print equal pages. */
  readonly input: string;
  /** The same of the cut with nothing marked as changed: equal ones are the same cut, whatever is marked on it. */
  readonly unmarkedInput: string;
  /**
   * Hash of the texts that it was made of, where nothing was wrong with it: equal ones need not be read again. Null: the cut had a
   * warning, or something is marked on it, or another text was read meanwhile.
   */
  readonly texts: string | null;
  readonly pages: readonly PrintedPage[];
}

export interface PrintRecord {
  /** A file for one cut, or one for many. */
  readonly of: 'cut' | 'cuts';
  /** Of which work and episode; '' where the manifest does not say. */
  readonly work: string;
  readonly cuts: readonly PrintedCut[];
}

/** Of the form below. A record of another version is none. */
const VERSION = '1';

/**
 * A record as ASCII without brackets and backslashes:
 * `1;cut;WORK;CUT INPUT LABEL=HASH LABEL=HASH! LABEL=!;CUT …`, percent-encoded; `!` is a page that is not in this file.
 * Where something is marked on a cut as changed, `INPUT/UNMARKED`; where the hash of its texts is known, `INPUT+TEXTS`.
 */
export function writeRecord({ of, work, cuts }: PrintRecord): string {
  const lines = cuts.map(({ cut, input, unmarkedInput, texts, pages }) => {
    const said = pages.map(({ label, hash, here }) => `${encoded(label)}=${hash ?? ''}${here ? '' : '!'}`);
    const inputs = input === unmarkedInput ? input : `${input}/${unmarkedInput}`;
    return [encoded(cut), texts === null ? inputs : `${inputs}+${texts}`, ...said].join(' ');
  });
  return [VERSION, of, encoded(work), ...lines].join(';');
}

/** Null: no record, of another version, or damaged. */
export function readRecord(text: string): PrintRecord | null {
  const [version, of, work, ...lines] = text.split(';');
  if (version !== VERSION || (of !== 'cut' && of !== 'cuts') || work === undefined) return null;
  try {
    const cuts = lines.map((line): PrintedCut => {
      const [cut, hashes = '', ...pages] = line.split(' ');
      const [inputs = '', texts = null] = hashes.split('+');
      const [input, unmarkedInput = input] = inputs.split('/');
      if (!cut || !input || !unmarkedInput || texts === '') throw new URIError('a cut lacks its number');
      return { cut: decodeURIComponent(cut), input, unmarkedInput, texts, pages: pages.map(readPage) };
    });
    return { of, work: decodeURIComponent(work), cuts };
  } catch (fault) {
    if (fault instanceof URIError) return null;
    throw fault;
  }
}

function readPage(text: string): PrintedPage {
  const [, label, hash, away] = /^([^=]+)=([\w-]*)(!?)$/.exec(text) ?? [];
  if (label === undefined) throw new URIError('a page cannot be read');
  return { label: decodeURIComponent(label), hash: hash || null, here: away === '' };
}

/** Leaves letters, digits and a few signs; brackets would be escaped in a PDF. Half a character pair becomes U+FFFD. */
function encoded(text: string): string {
  return encodeURIComponent(Buffer.from(text).toString()).replace(
    /[!'()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16)}`,
  );
}
