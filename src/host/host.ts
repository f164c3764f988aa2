/**
 * The world outside: files, clock, environment, version control. Everything that is not a pure function of the text
 * comes through this one interface, so that tests can move the clock or fill the disk.
 */

/** What reading a path gave; `reason` is a short phrase for a message ("no such file", "is a folder", …). */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: string };

/** The largest file that is read, in bytes: a cut is some hundred lines. */
export const LARGEST_FILE = 8 * 1024 * 1024;

export interface Host {
  /** The bytes of a file, of LARGEST_FILE at most. Never throws. */
  read(path: string): Reading<Uint8Array>;
  /** Names in a folder, sorted by code point. Never throws. */
  list(folder: string): Reading<string[]>;
  kind(path: string): 'file' | 'folder' | 'none';
  /** The canonical path with links resolved, or the path itself where there is none. */
  real(path: string): string;
  /**
   * Writes beside the final name and renames: the file is whole or as it was before. Makes the folders that are missing.
   * Never throws.
   */
  write(path: string, bytes: Uint8Array): Reading<null>;
  /** All of standard input; reading stops soon after LARGEST_FILE. */
  standardInput(): Promise<Uint8Array>;
  out(text: string | Uint8Array): void;
  error(text: string): void;
  /** Now, or `SOURCE_DATE_EPOCH`; only for what is allowed to differ between runs. */
  now(): Date;
  env(name: string): string | undefined;
  /** The shipped font, a TrueType file. Never throws. */
  font(weight: 'regular' | 'bold'): Reading<Uint8Array>;
  /** Whether standard error is a terminal that shows colour. */
  readonly colour: boolean;
  readonly cwd: string;
  /** The short id of the commit that a folder's work tree stands on, if any. */
  commit(folder: string): string | undefined;
  /**
   * The world as it was at a revision of the work tree that `place` (absolute) lies in: its texts of cuts and manifests, at
   * their paths. `rev` as git takes it. Never throws.
   */
  revision(place: string, rev: string): Reading<Host>;
  /** Columns of the terminal that standard error is, or null: it is none. */
  readonly columns: number | null;
}
