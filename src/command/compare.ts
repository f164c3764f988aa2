import type { Command } from 'commander';
import type { Change } from '../compare/compare.js';
import { compare } from '../compare/compare.js';
import { sentence, type Telling, telling } from '../compare/words.js';
import type { Host } from '../host/host.js';
import type { LabelLanguage } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved.js';
import { Desk, FORMATS, type Format, plural } from './desk.js';
import { LineFault } from './line.js';
import { choice, examples } from './options.js';
import type { Run } from './run.js';
import { reportFinding, type Side, sideOf, sinceOf, type Version, versionsOf } from './versions.js';

interface Options {
  readonly since?: string;
  readonly json?: boolean;
  readonly labels?: LabelLanguage;
  readonly git?: boolean;
  readonly format: Format;
}

/** Raised when something that is there changes its meaning or goes; additions leave it. */
const COMPARISON_VERSION = 1;

export function define(command: Command, run: Run): Command {
  return command
    .argument(
      '[versions...]',
      'OLD and NEW: cuts, folders, an episode.yaml, or REVISION:PATH as git has it; - is standard input',
    )
    .option('--since <revision>', 'compare what is named, or the whole episode, with what it was then')
    .option('--json', 'everything in numbers, as JSON')
    .addOption(choice('-l, --labels <language>', 'language of the sentences', ['ja', 'en']))
    .option('--git', 'be called by git as its diff for cuts')
    .addOption(
      choice('--format <form>', 'how problems are shown on standard error', FORMATS).default('human'),
    )
    .addHelpText(
      'after',
      `${examples(
        ['cutwright compare take-1/c012.cut c012.cut', 'what a retake note of cut 12 must say'],
        ['cutwright compare HEAD~1:cuts/c012.cut cuts/c012.cut', 'against what git has'],
        ['cutwright compare take-1/ cuts/', 'folders, cut by cut, by their numbers'],
        ['cutwright compare --since v1', 'the episode against a tag'],
        ['cutwright compare --since HEAD cuts/c012.cut -l ja', 'one cut, in Japanese'],
      )}
Leaves with 0 where nothing differs, 1 where something does, 2 where the two cannot be compared.
`,
    )
    .action(async (words: string[], options: Options) => {
      if (options.git) {
        const { gitDiff } = await import('./git-diff.js');
        run.status = await gitDiff(run.host, words, options.labels ?? 'en');
      } else run.status = await compareAll(run.host, words, options);
    });
}

async function compareAll(host: Host, words: readonly string[], options: Options): Promise<number> {
  const desk = new Desk(host, options.format, false);
  const { old, now } = await sidesOf(host, words, options.since);
  reportFinding(old, desk);
  reportFinding(now, desk);
  const comparison = await new Pairing(old, now, desk).all();
  const { differing, onlyOld, onlyNow, compared, restricted } = comparison;
  if (options.json) host.out(`${JSON.stringify(jsonOf(comparison, old, now), null, 2)}\n`);
  else {
    for (const { was, is, changes } of differing) host.out(noteOf(was, is, changes, options.labels ?? 'en'));
    host.out(onlyLine(old.label, onlyOld) + onlyLine(now.label, onlyNow));
  }
  if (restricted !== null) {
    const message = `\`${restricted.label}\` holds no cut ${restricted.key}.`;
    throw new LineFault('wrong-arguments', restricted.label, message);
  }
  const differ = differing.length + onlyOld.length + onlyNow.length;
  if (compared > 1)
    desk.say(
      `${plural(compared, 'cut')} compared: ${differing.length > 0 ? `${differing.length} differ` : 'all the same'}`,
    );
  if (desk.finish() !== 0) return 2;
  return differ > 0 ? 1 : 0;
}

async function sidesOf(host: Host, words: readonly string[], since: string | undefined) {
  if (since !== undefined) return sinceOf(host, since, words);
  const [old, now, more] = words;
  if (old === undefined || now === undefined) {
    throw new LineFault(
      'wrong-arguments',
      null,
      'Name the old and the new version, or `--since` and a revision.',
    );
  }
  if (more !== undefined)
    throw new LineFault('wrong-arguments', more, 'Two versions are compared, an old and a new one.');
  if (old === '-' && now === '-')
    throw new LineFault('wrong-arguments', '-', 'Standard input can be only one of the two.');
  return { old: await sideOf(host, old), now: await sideOf(host, now) };
}

interface Differing {
  readonly was: SolvedShot['shot'];
  readonly is: SolvedShot;
  readonly changes: readonly Change[];
}

interface Comparison {
  /** In the order of the new side. */
  readonly differing: readonly Differing[];
  readonly onlyOld: readonly string[];
  readonly onlyNow: readonly string[];
  readonly compared: number;
  /** One file was named, and the many of the other side have no cut of its number. */
  readonly restricted: { readonly label: string; readonly key: string } | null;
}

/** Brings the cuts of both sides together by their numbers, holding no more of them than wait for their other half. */
class Pairing {
  private readonly waiting = { old: new Map<string, Version>(), now: new Map<string, Version>() };
  private readonly order = new Map<string, number>();
  private readonly differing: Differing[] = [];
  /** Files whose number nobody knows. */
  private readonly unknown = new Set<string>();
  private compared = 0;

  constructor(
    private readonly old: Side,
    private readonly now: Side,
    private readonly desk: Desk,
  ) {}

  async all(): Promise<Comparison> {
    const sources = { old: versionsOf(this.old, this.desk), now: versionsOf(this.now, this.desk) };
    const both = this.old.single && this.now.single;
    for (let running = true; running; ) {
      running = false;
      const taken: Partial<Record<'old' | 'now', Version>> = {};
      for (const name of ['old', 'now'] as const) {
        const next = await sources[name].next();
        if (next.done) continue;
        running = true;
        if (both) taken[name] = next.value;
        else this.meet(name, next.value);
      }
      if (taken.old && taken.now) this.pair(taken.old, taken.now);
    }
    return this.result();
  }

  private meet(name: 'old' | 'now', version: Version): void {
    const { key, file } = version;
    if (key === null) {
      this.unknown.add(file);
      return;
    }
    if (name === 'now') this.order.set(key, this.order.size);
    const others = this.waiting[name === 'old' ? 'now' : 'old'];
    const other = others.get(key);
    if (!other) {
      this.waiting[name].set(key, version);
      return;
    }
    others.delete(key);
    if (name === 'old') this.pair(version, other);
    else this.pair(other, version);
  }

  private pair({ solved: old }: Version, { solved: now }: Version): void {
    if (!old || !now) return;
    this.compared += 1;
    const changes = compare(old, now);
    if (changes.length > 0) this.differing.push({ was: old.shot, is: now, changes });
  }

  private result(): Comparison {
    const { old, now, waiting, compared } = this;
    const only = (name: 'old' | 'now') =>
      [...waiting[name]].filter(([, { file }]) => !this.unknown.has(file)).map(([key]) => key);
    const place = (is: SolvedShot) => this.order.get(keyOf(is)) ?? 0;
    const differing = [...this.differing].sort((a, b) => place(a.is) - place(b.is));
    // Of many against one only the one of its number is meant.
    const alone = old.single !== now.single;
    const single = old.single ? 'old' : 'now';
    const [key] = alone ? only(single) : [];
    const restricted = key === undefined ? null : { label: (old.single ? now : old).label, key };
    return {
      differing,
      onlyOld: alone ? [] : only('old'),
      onlyNow: alone ? [] : only('now'),
      compared,
      restricted,
    };
  }
}

const keyOf = ({ shot }: SolvedShot): string => shot.cut;

/** A cut's heading and a line a change. */
export function noteOf(
  was: SolvedShot['shot'],
  is: SolvedShot,
  changes: readonly Change[],
  language: LabelLanguage,
): string {
  const t = telling(is, language);
  // What the heading says is not said again.
  const lines = changes.filter(({ kind }) => kind !== 'time').map((change) => `  ${sentence(change, t)}\n`);
  return `${heading(was, is, t)}\n${lines.join('')}`;
}

function heading(was: SolvedShot['shot'], { shot }: SolvedShot, t: Telling): string {
  const name = t.language === 'ja' ? `カット ${shot.cut}` : `cut ${shot.cut}`;
  if (was.time === shot.time) return name;
  return `${name}  ${t.length(was.time)} → ${t.length(shot.time)}`;
}

/** `only in HEAD~1: cuts 1-7, 9`. */
function onlyLine(label: string, keys: readonly string[]): string {
  if (keys.length === 0) return '';
  return `only in ${label}: ${keys.length === 1 ? 'cut' : 'cuts'} ${ranges(keys)}\n`;
}

/** Numbers that follow each other are joined. */
function ranges(keys: readonly string[]): string {
  const runs: { first: string; last: string }[] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run && /^\d+$/.test(key) && Number(run.last) + 1 === Number(key)) run.last = key;
    else runs.push({ first: key, last: key });
  }
  return runs.map(({ first, last }) => (first === last ? first : `${first}-${last}`)).join(', ');
}

function jsonOf({ differing, onlyOld, onlyNow }: Comparison, old: Side, now: Side) {
  return {
    version: COMPARISON_VERSION,
    old: old.label,
    now: now.label,
    cuts: differing.map(({ was, is, changes }) => {
      const [en, ja] = (['en', 'ja'] as const).map((language) => telling(is, language)) as [Telling, Telling];
      return {
        cut: is.shot.cut,
        title: is.shot.title,
        fps: is.shot.fps,
        time: { old: was.time, now: is.shot.time },
        changes: changes.map((change) => ({ ...change, en: sentence(change, en), ja: sentence(change, ja) })),
      };
    }),
    onlyOld,
    onlyNow,
  };
}
