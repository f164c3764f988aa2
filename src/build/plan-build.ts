/** Finds what `build --plan` writes down: the cuts that are printed, where to, and what each print hangs on. */

import { dirname, join, relative, resolve } from 'node:path';
import { NO_SOURCES } from '../episode/batch.js';
import { compile } from '../episode/compile-cut.js';
import { inputsOf, textsOf } from '../episode/cut-texts.js';
import { newEpisodeCache } from '../episode/episode.js';
import type { Found, Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import {
  BUILD_FILES,
  type BuildFile,
  type BuildRule,
  type BuildTool,
  buildFileText,
  unwritablePath,
} from './build-file.js';
import { deliver, isFolder, Targets } from './output-targets.js';
import type { Reporter } from './reporter.js';
import { PROGRAM } from './settled-cuts.js';
import { UsageError } from './usage-error.js';

export interface BuildFileRequest {
  readonly tool: BuildTool;
  /** As `--output` says. */
  readonly output: string | undefined;
  /** Options of `build` for each cut, and all words of the call. */
  readonly options: readonly string[];
  readonly command: readonly string[];
  /** Folders in which cuts were looked for; absolute. */
  readonly searched: readonly string[];
}

/**
 * Writes the build file into the folder of the outputs, or into the current one. Compiles nothing but what may hold no cut. Throws
 * UsageError where the tool cannot be told of a file, and for an output that is a file.
 */
export function planBuild(host: Host, reporter: Reporter, found: Found, request: BuildFileRequest): void {
  const { tool, output, options, command } = request;
  if (output !== undefined && !isFolder(host, output))
    throw new UsageError('wrong-arguments', output, { variant: 'plan-folder' });
  const targets = new Targets(host, found, output, '.pdf');
  const cache = newEpisodeCache();
  const short = (path: string): string => relative(host.cwd, path) || '.';
  const rules: BuildRule[] = [];
  const all = new Set<string>();
  const cuts = new Set<string>();
  /** Files that may come. */
  const waited = new Set<string>();
  const isThere = (path: string): boolean => host.kind(path) !== 'none';
  for (const job of found.jobs) {
    if (!isFile(job)) continue;
    const inputs = inputsOf(host, job, cache).filter((one) => isThere(one) || !waited.add(one));
    for (const one of inputs) all.add(one);
    const holdsCut =
      textsOf(host, job, cache) !== null ||
      !compile(host, job.path, job.episode, { name: job.name, cache }).house;
    if (!holdsCut) continue;
    cuts.add(dirname(job.path));
    const rival = targets.rivalry(job);
    if (rival) {
      reporter.report([rival], NO_SOURCES);
      return;
    }
    const [cut, ...more] = inputs.map(short);
    rules.push({ output: short(targets.of(job).path!), cut: cut!, inputs: more });
  }
  for (const { file } of found.episodes) all.add(resolve(host.cwd, file!));
  const folder = output ?? '.';
  // Every print touches the folder that it goes to; where cuts lie there too, that cannot be helped.
  const written = new Set(targets.folders());
  const folders = new Set([...request.searched, ...[...waited].map(dirname)].filter(isThere));
  const searched = [...folders].filter((one) => !written.has(one) || cuts.has(one));
  const file: BuildFile = {
    path: join(folder, BUILD_FILES[tool]),
    folder,
    options,
    command,
    inputs: [...all, ...searched].map(short),
    program: `cutwright ${PROGRAM}`,
    rules,
  };
  const bad = unwritablePath(tool, file);
  if (bad !== undefined)
    throw new UsageError('wrong-arguments', null, { variant: 'plan-name', tool, file: bad });
  const path = resolve(host.cwd, file.path);
  const bytes = Buffer.from(buildFileText(tool, file));
  const fault = deliver(host, { path, name: file.path }, bytes, { file: file.path, start: 0, end: 0 });
  if (fault) reporter.report([fault], NO_SOURCES);
  else reporter.say(reporter.words.wrotePlan(file.path, rules.length, `${tool} -f ${file.path}`));
}

function isFile(job: Job): job is Job & { readonly path: string } {
  return job.path !== null;
}
