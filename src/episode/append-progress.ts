/** Writes down what has happened to cuts: rows more at the end of `progress.csv`, and nothing else of it changed. */

import { basename, dirname, join } from 'node:path';
import { cutStanding, type StageState } from '../count/stage-states.js';
import type { Host, Reading } from '../host/host.js';
import { snapshot } from '../host/overlay-host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { findingDiagnostic } from './check-progress.js';
import { cutKey, type Episode } from './episode.js';
import { type ProgressFile, parseProgress, progressPlace, readProgress, withRow } from './progress-csv.js';

export interface NewRow {
  /** As it is to be written. */
  readonly cut: string;
  readonly stage: string;
  readonly state: StageState;
  /** ISO 8601. */
  readonly date: string;
  readonly person: string;
  readonly note: string;
}

export interface Appended {
  /** False: nothing was written, and the last of the diagnostics says why. */
  readonly written: boolean;
  readonly diagnostics: readonly Diagnostic[];
  /** What the diagnostics point into. */
  readonly file: Pick<ProgressFile, 'name' | 'text'>;
}

/**
 * Appends rows to the table of an episode that has a manifest; all or none of them. Never writes over what somebody has saved since it was read,
 * nor
 * where a spreadsheet has the table open, nor while another process of this program writes to it. Never throws on what is in the file.
 */
export function appendProgress(host: Host, episode: Episode, rows: readonly NewRow[]): Appended {
  const { path, name } = progressPlace(episode)!;
  // The lock is the file's own: `watch` may have that of the folder.
  const lock = host.lockFolder(path);
  const failed = (one: Diagnostic): Appended => ({
    written: false,
    diagnostics: [one],
    file: { name, text: '' },
  });
  const span = { file: name, start: 0, end: 0 };
  if (!lock.ok)
    return failed(
      lock.by === null
        ? diagnose('output-unwritable', span, { output: name, reason: lock.reason })
        : diagnose('progress-open', span, { variant: 'process', file: name, by: lock.by }),
    );
  try {
    const open = spreadsheetLock(host, path);
    if (open !== null)
      return failed(
        diagnose('progress-open', span, {
          variant: 'spreadsheet',
          file: name,
          lock: join(dirname(name), open),
        }),
      );
    return appended(host, episode, rows);
  } finally {
    lock.release();
  }
}

function appended(host: Host, episode: Episode, rows: readonly NewRow[]): Appended {
  const { stages } = episode.production;
  // The bytes that are parsed are those that the file is held against before it is written.
  const here = snapshot(host);
  const file = readProgress(here, episode)!;
  const { path, name } = file;
  const before = bytesAt(here, path);
  const diagnostics: Diagnostic[] = [...file.diagnostics];
  const failed = (...more: readonly Diagnostic[]): Appended => ({
    written: false,
    diagnostics: [...diagnostics, ...more],
    file,
  });
  if (file.columns === null) return failed();
  let { text } = file;
  const read = [...file.rows];
  for (const row of rows) {
    const made = withRow({ ...file, text }, row);
    if ('missing' in made) {
      const start = { file: name, start: 0, end: 0 };
      return failed(
        diagnose('progress-faulty', start, { variant: 'no-column', name: made.missing, found: null }),
      );
    }
    const again = parseProgress(name, made.text, stages);
    const own = again.rows.at(-1);
    if (again.rows.length !== read.length + 1 || own?.key !== cutKey(row.cut) || own.stage !== row.stage)
      throw new Error('the row that was to be written would not be read as such; nothing was written');
    const { findings } = cutStanding(
      again.rows.filter(({ key }) => key === own.key),
      stages,
    );
    for (const finding of findings) {
      if ('before' in finding) {
        const { row, before: earlier } = finding;
        if (row !== own && earlier !== own) continue;
        // The row stands nowhere yet, and its day may lie before the other's: what it contradicts is shown.
        const other = row === own ? earlier : row;
        const found = findingDiagnostic({ ...finding, row: own, before: other });
        return failed({ ...found, span: other.places.stage, notes: [] });
      }
      if (finding.row === own) diagnostics.push(findingDiagnostic(finding));
    }
    text = made.text;
    read.push(own);
  }
  const now = bytesAt(host, path);
  if (!same(before, now))
    return failed(
      diagnose('output-unwritable', { file: name, start: 0, end: 0 }, { output: name, reason: null }),
    );
  const mark = before.ok && Buffer.from(before.value).subarray(0, 3).toString('hex') === 'efbbbf';
  const written = host.write(path, Buffer.from((mark ? '\ufeff' : '') + text, 'utf8'));
  if (!written.ok)
    return failed(
      diagnose(
        'output-unwritable',
        { file: name, start: 0, end: 0 },
        { output: name, reason: written.reason },
      ),
    );
  return { written: true, diagnostics, file: { name, text } };
}

const bytesAt = (host: Host, path: string): Reading<Uint8Array> =>
  host.kind(path) === 'none' ? { ok: false, reason: '' } : host.read(path);

function same(before: Reading<Uint8Array>, now: Reading<Uint8Array>): boolean {
  if (!before.ok || !now.ok)
    return before.ok === now.ok && (before.ok || now.ok || before.reason === now.reason);
  return Buffer.compare(before.value, now.value) === 0;
}

/** Office suites put `.~lock.NAME#` beside a table that is open in them (common practice). Null: nobody has it open. */
function spreadsheetLock(host: Host, path: string): string | null {
  const lock = `.~lock.${basename(path)}#`;
  return host.kind(join(dirname(path), lock)) === 'none' ? null : lock;
}
