/** Where a cut stands in production, out of the table of its episode. */

import { dueDate } from '../count/count-stages.js';
import { cutStanding, type StageRow } from '../count/stage-states.js';
import { cutKey, type Episode, type EpisodeCache } from '../episode/episode.js';
import { readProgress } from '../episode/progress-csv.js';
import type { Host } from '../host/host.js';
import type { CutProduction } from '../sheet/page-look.js';
import type { PrintableCut } from './cut-printer.js';
import { printableLine } from './printable-line.js';

/** Tables by episode, for the length of a run. */
const tables = new WeakMap<EpisodeCache, Map<Episode, readonly StageRow[]>>();

export function productionOf({ host, job, solved, cache }: PrintableCut): CutProduction {
  const { stages, due } = job.episode.production;
  const key = cutKey(solved.shot.cut);
  const rows = rowsOf(host, job.episode, cache).filter((row) => row.key === key);
  const { standings, retakes } = cutStanding(rows, stages);
  return {
    stages: standings.map(({ stage, state, row }) => ({
      ...{ stage, state, date: row?.date ?? '', person: printableLine(row?.person ?? '') },
      due: dueDate(due, stage, key) ?? null,
    })),
    retakes: retakes.map(({ stage, date, person, note }) => ({
      ...{ stage, date, person: printableLine(person), note: printableLine(note) },
    })),
  };
}

function rowsOf(host: Host, episode: Episode, run: EpisodeCache): readonly StageRow[] {
  const known = tables.get(run) ?? new Map<Episode, readonly StageRow[]>();
  tables.set(run, known);
  const rows = known.get(episode) ?? readProgress(host, episode)?.rows ?? [];
  known.set(episode, rows);
  return rows;
}
