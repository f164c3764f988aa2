/** `export --edit`: all cuts of a run as one edit. */

import { basename, dirname, join, normalize, resolve } from 'node:path';
import {
  deliver,
  inputsOf,
  isFolder,
  overwriting,
  STANDARD_OUTPUT,
  type Target,
} from '../build/output-targets.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import { eachCut, findAll } from '../episode/batch.js';
import type { Found } from '../episode/find-cuts.js';
import { edlText } from '../export/edit-decision-list.js';
import { type EpisodeEdit, editOf, type Handed } from '../export/episode-edit.js';
import { otioText } from '../export/otio.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, hasErrors } from '../language/diagnostic.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import { plural } from '../words/number-format.js';
import type { ReportOptions } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';

/** A writer gives the text, or says why the form cannot hold the edit. */
type Write = (
  edit: EpisodeEdit,
  start: number,
) => { text: string | null; diagnostics: readonly Diagnostic[] };

const forms = {
  otio: (edit, start) => ({ text: otioText(edit, start), diagnostics: [] }),
  edl: edlText,
} satisfies Record<string, Write>;

export type EditForm = keyof typeof forms;
export const EDIT_FORMS = Object.keys(forms) as readonly EditForm[];

export interface EditOptions extends ReportOptions {
  readonly form: EditForm;
  readonly start?: string | undefined;
  readonly output?: string;
}

/**
 * Writes the edit of all cuts in their order. A cut with errors is none that could be left out: without it all that follows would stand
 * at a wrong time, so then nothing is written.
 */
export async function exportEdit(
  host: Host,
  files: readonly string[],
  { form, start = '00:00:00:00', output = '-', format, strict = false }: EditOptions,
): Promise<number> {
  const reporter = new ConsoleReporter(host, format, strict);
  if (!/^\d\d:\d\d:\d\d:\d\d$/.test(start)) throw wrongStart(start);
  const found = await findAll(host, reporter, files);
  const target = targetOf(host, found, form, output);
  const cuts: Handed[] = [];
  const sources = new Map<string, string>();
  let failed = 0;
  await eachCut(host, reporter, found, (compiled) => {
    if (compiled.house) return;
    const { solved, diagnostics } = compiled;
    failed += 1;
    if (solved === null || hasErrors(diagnostics, strict)) return;
    failed -= 1;
    cuts.push({ shot: solved.shot, counts: solved.counts });
    for (const [name, text] of compiled.sources) sources.set(name, text);
  });
  const broken = [...found.diagnostics, ...found.whole.flatMap((one) => one.diagnostics)];
  if (failed > 0 || cuts.length === 0 || hasErrors(broken, strict)) {
    const count = failed > 0 ? `${plural(failed, 'cut')} with errors, ` : '';
    reporter.say(`no edit written: ${count}${reporter.tally()}`);
    return reporter.finish();
  }
  const { edit, diagnostics } = editOf(cuts, nameOf(host, found));
  reporter.report(diagnostics, sources);
  const made = edit && forms[form](edit, startFrame(start, edit.fps));
  if (made) reporter.report(made.diagnostics, sources);
  if (!edit || made?.text == null) {
    reporter.say(`no edit written: ${reporter.tally()}`);
    return reporter.finish();
  }
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const fault = deliver(host, target, Buffer.from(made.text, 'utf8'), span);
  if (fault) throw new UsageError(fault.code, target.name, fault.parameters);
  if (target.path !== null) {
    reporter.say(
      `wrote ${target.name}: ${plural(cuts.length, 'cut')}, ${secondsAndFrames(edit.frames, edit.fps)}`,
    );
  }
  return reporter.finish();
}

const wrongStart = (start: string): UsageError =>
  new UsageError('option-value', start, { variant: 'start-time' });

function startFrame(start: string, fps: number): number {
  const [hours, minutes, seconds, frames] = start.split(':').map(Number) as [number, number, number, number];
  if (hours > 23 || minutes > 59 || seconds > 59) throw wrongStart(start);
  if (frames >= fps) throw new UsageError('option-value', start, { variant: 'start-frames', fps });
  return ((hours * 60 + minutes) * 60 + seconds) * fps + frames;
}

/** One file; in a folder it is called as the episode's folder is. */
function targetOf(host: Host, found: Found, form: EditForm, output: string): Target {
  const episodes = new Set(found.jobs.map(({ episode }) => episode.file));
  if (episodes.size > 1) {
    throw new UsageError('wrong-arguments', null, { variant: 'edit-episodes', episodes: episodes.size });
  }
  if (output === '-') return STANDARD_OUTPUT;
  const name = isFolder(host, output) ? join(output, `${nameOf(host, found)}.${form}`) : output;
  const target = { path: resolve(host.cwd, name), name: normalize(name) };
  const inputs = inputsOf(host, found);
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const refused = overwriting(host, target.path, output, span, (real) => inputs.has(real));
  if (refused) throw new UsageError(refused.code, output, refused.parameters);
  return target;
}

/** What an edit is called whose episode has no title: as its folder. */
function nameOf({ cwd }: Host, { jobs: [first] }: Found): string {
  const folder = first?.episode.folder ?? (first?.path ? dirname(first.path) : cwd);
  return basename(folder) || 'edit';
}
