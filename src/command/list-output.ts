/** What the commands that list an episode have alike: the form that comes out, and where it goes. */

import { extname, resolve } from 'node:path';
import { deliver, inputsOf, overwriting, STANDARD_OUTPUT, type Target } from '../build/output-targets.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import type { Episode } from '../episode/episode.js';
import type { Found } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';

export type ListForm = 'table' | 'csv' | 'json' | 'pdf';

export interface ListOutput {
  readonly output?: string;
  readonly csv?: boolean;
  readonly json?: boolean;
}

/** What comes out; an ending of the file says it, too. Null: nothing says it. */
export function listForm({ output, csv, json }: ListOutput): ListForm | null {
  if (csv && json)
    throw new UsageError('wrong-arguments', '--json', {
      variant: 'not-together',
      one: '--csv',
      other: '--json',
    });
  const said = csv ? 'csv' : json ? 'json' : null;
  const ending = output === undefined || output === '-' ? null : extname(output).toLowerCase();
  const meant =
    ending === null
      ? null
      : { '.pdf': 'pdf' as const, '.csv': 'csv' as const, '.json': 'json' as const }[ending];
  if (ending !== null && meant === undefined && said === null)
    throw new UsageError('option-value', output!, { variant: 'list-ending' });
  if (said !== null && meant != null && meant !== said)
    throw new UsageError('wrong-arguments', output!, {
      variant: 'not-together',
      one: `--${said}`,
      other: output!,
    });
  return said ?? meant ?? (output === '-' ? 'pdf' : null);
}

/** The one episode that all cuts belong to. */
export function theEpisode({ jobs }: Found): Episode {
  const episodes = [...new Map(jobs.map(({ episode }) => [episode.file, episode])).values()];
  if (episodes.length > 1) {
    throw new UsageError('wrong-arguments', null, {
      variant: 'list-episodes',
      manifests: episodes.map(({ file }) => file),
    });
  }
  return episodes[0]!;
}

/** Refuses to write over what was read; `more`: further files of the episode, absolute. */
export function listTarget(
  host: Host,
  found: Found,
  { output }: ListOutput,
  more: readonly string[] = [],
): Target {
  if (output === undefined || output === '-') return STANDARD_OUTPUT;
  const path = resolve(host.cwd, output);
  const inputs = new Set([...inputsOf(host, found), ...more.map((one) => host.real(one))]);
  const span = { file: COMMAND_LINE, start: 0, end: 0 };
  const refused = overwriting(host, path, output, span, (real) => inputs.has(real));
  if (refused) throw new UsageError(refused.code, output, refused.parameters);
  return { path, name: output };
}

export function putList(host: Host, target: Target, bytes: Uint8Array): void {
  const fault = deliver(host, target, bytes, { file: COMMAND_LINE, start: 0, end: 0 });
  if (fault) throw new UsageError(fault.code, target.name, fault.parameters);
}
