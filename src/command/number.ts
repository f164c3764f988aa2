import type { Command } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { eachCut, findAll, NO_SOURCES } from '../episode/batch.js';
import { type Compiled, compile } from '../episode/compile-cut.js';
import type { Found, Job } from '../episode/find-cuts.js';
import { decode } from '../episode/read-text.js';
import type { Host } from '../host/host.js';
import { snapshot } from '../host/overlay-host.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import { celsEdits } from '../language/cels-line.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import { withEdits } from '../language/statement-reader.js';
import { nearest } from '../language/suggest.js';
import { type Pins, pinsFor, unpinnable, unused } from '../solve/cels-lines.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { type CommandContext, examples, type ReportOptions, withReport } from './command-options.js';
import { ConsoleReporter } from './console-reporter.js';
import { type Dry, questions, type Retimed, retime, stillShown, summary, told } from './number-report.js';
import { bytesOf, marked, printDiff, remembering, saying, writeBack } from './rewrite-input.js';

interface Options extends ReportOptions, Retimed, Dry {
  readonly level?: string;
}

export function define(command: Command, context: CommandContext): Command {
  const more = (word: string, before: readonly string[] = []) => [...before, word];
  return withReport(
    command
      .argument('<files...>', 'cuts, folders or an episode.yaml; - is standard input')
      .option('--level <names>', 'only these levels, such as A,B')
      .option('--new <drawing>', 'an in-between put in where the paper exists, such as A:1.1a', more)
      .option('--gone <drawing>', 'an in-between taken out there, such as A:1.2', more)
      .option('--check', 'write nothing; leave with 1 where a drawing has no pinned number')
      .option('--diff', 'write nothing; show what would change'),
  )
    .addHelpText(
      'after',
      `
Once the drawings exist, their numbers must not move: this writes a \`cels\` line for each level, or adds new drawings at the end
of the one that is there. Everything else in the file stays as it is.
${examples(
  ['cutwright number c012.cut', 'pin the numbers of its levels'],
  ['cutwright number c012.cut --level A', 'only those of level A'],
  ['cutwright number c012.cut --new A:1.1a', 'after a retime: the one after 1.1 is new'],
  ['cutwright number c012.cut --gone A:2.1', '2.1 is taken out; its number is not used any more'],
  ['cutwright number --check cuts/', 'has every drawing its number?'],
)}`,
    )
    .action(async (files: string[], options: Options) => {
      context.status = await number(context.host, files, options);
    });
}

type Outcome = 'changed' | 'same' | 'failed';

async function number(host: Host, files: readonly string[], options: Options): Promise<number> {
  const reporter = new ConsoleReporter(host, options.format, options.strict === true);
  const here = snapshot(await remembering(host, files));
  const found = await findAll(here, reporter, files);
  const before = new Map<Job, string>();
  const world = await retimed(here, found, options, before);
  const wanted = options.level?.split(',').map((name) => name.trim().normalize('NFC'));
  const missed = new Set(wanted);
  const levels = new Set<string>();
  const count = { cuts: 0, changed: 0, failed: 0 };
  let unshown: string | undefined;

  /** What came of a cut; null where nothing was to be done, as an option of the run is wrong. */
  const one = async (compiled: Compiled, job: Job): Promise<Outcome | null> => {
    const { solved, diagnostics } = compiled;
    if (solved === null || hasErrors(diagnostics, options.strict)) {
      for (const line of questions(host, compiled, job, reporter.words)) reporter.say(line);
      return 'failed';
    }
    for (const { name } of solved.levels) {
      levels.add(name);
      missed.delete(name);
    }
    if (missed.size > 0 && found.jobs.length === 1) return null;
    unshown = options.new?.find((word) => isUnused(solved, word));
    if (unshown !== undefined) return null;
    const chosen = (level: string) => wanted === undefined || wanted.includes(level);
    if (unsettled(compiled, chosen)) {
      reporter.say(reporter.words.sayPassage(job.name));
      return 'failed';
    }
    const refused = twoCounts(solved, chosen);
    if (refused.length > 0) {
      reporter.report(refused, compiled.sources);
      return 'failed';
    }
    const bytes = await bytesOf(world, job);
    const { text } = decode(job.name, bytes);
    const pins = pinsFor(solved).filter(({ level }) => chosen(level));
    const after = pinned(world, compiled, job, text, pins);
    const typed = before.get(job) ?? text;
    if (options.diff) await printDiff(host, job.name, typed, after);
    if (!options.diff && !options.check && (after !== typed || job.path === null)) {
      const fault = writeBack(host, job, after, marked(bytes), await bytesOf(here, job));
      if (fault) {
        reporter.report([fault], NO_SOURCES);
        return 'failed';
      }
    }
    for (const line of [
      ...drawnAnew(solved, options, reporter.words),
      ...told(solved, pins, chosen, options, reporter.words),
    ])
      reporter.say(`${job.name}: ${line}`);
    return after === typed ? 'same' : 'changed';
  };

  await eachCut(world, reporter, found, async (compiled, job) => {
    if (compiled.house) {
      if (job.named) reporter.report([nothing(job)], NO_SOURCES);
      return;
    }
    count.cuts += 1;
    // A cut on which the program fails is not numbered either.
    let outcome: Outcome | null = 'failed';
    try {
      outcome = await one(compiled, job);
    } finally {
      if (outcome === 'changed' || outcome === 'failed') count[outcome] += 1;
    }
  });

  if (unshown !== undefined) throw new UsageError('option-value', unshown, { variant: 'drawing-not-shown' });
  const [missing] = missed;
  if (missing !== undefined && count.failed === 0) {
    const guess = nearest(missing, [...levels]) ?? null;
    throw new UsageError('option-value', options.level!, {
      variant: 'level-not-numbered',
      level: missing,
      guess,
    });
  }
  if (count.cuts > 0) reporter.say(summary(count, options, reporter));
  const status = reporter.finish();
  return count.failed > 0 || (options.check && count.changed > 0) ? Math.max(status, 1) : status;
}

/** The numbers that the drawings of `--new` have got. */
function drawnAnew(shot: SolvedShot, options: Options, words: RunTexts): string[] {
  return (options.new ?? []).flatMap((word) => {
    const { level, drawing } = namedBy(shot, word);
    const found = level?.drawings.find((one) => one.drawing === drawing);
    return level && found
      ? [words.named([{ cel: `${level.name}${found.cel}`, name: found.drawing }], false)]
      : [];
  });
}

/** Whether a drawing of `--new` is only a name in a `cels` line. */
function isUnused(shot: SolvedShot, word: string): boolean {
  const { level, drawing } = namedBy(shot, word);
  return level !== undefined && unused(level).some((one) => one.drawing === drawing);
}

/** The level and the drawing that a word such as `A:1.1a` names. */
function namedBy({ levels }: SolvedShot, word: string) {
  const [name, drawing] = word.split(':').map((part) => part.trim().normalize('NFC'));
  return { level: levels.find((one) => one.name === name), drawing };
}

/** The world with what `--new` and `--gone` say already in the cut's text; `before` keeps the text as it was. */
async function retimed(host: Host, found: Found, options: Options, before: Map<Job, string>): Promise<Host> {
  const word = options.new?.[0] ?? options.gone?.[0];
  if (word === undefined) return host;
  const [job, ...others] = found.jobs;
  if (!job) return host;
  if (others.length > 0) throw new UsageError('wrong-arguments', word, { variant: 'retimed-several' });
  const bytes = await bytesOf(host, job);
  const read = decode(job.name, bytes);
  if (!read.ok) return host;
  before.set(job, read.text);
  const text = (marked(bytes) ? '\ufeff' : '') + retime(read.text, options);
  const world = saying(host, job.path, Buffer.from(text, 'utf8'));
  const shown = stillShown(compile(world, job.path, job.episode, { name: job.name }), options);
  if (shown) throw new UsageError('option-value', shown.word, { variant: 'still-shown', ...shown });
  return world;
}

/** The text with its `cels` lines. Throws where a drawing would get another number by it, which must never be. */
function pinned(host: Host, before: Compiled, job: Job, text: string, pins: readonly Pins[]): string {
  if (pins.length === 0) return text;
  const edits = celsEdits(text, before.tree!, new Map(pins.map(({ level, names }) => [level, names])));
  const after = withEdits(
    text,
    edits.map((edit) => ({ ...edit.span, text: edit.text })),
  );
  const again = compile(host, job.path, job.episode, { name: job.name, bytes: Buffer.from(after, 'utf8') });
  const numbers = ({ solved }: Compiled): string =>
    JSON.stringify(
      solved?.levels.map(({ name, drawings }) => [name, drawings.map(({ cel, drawing }) => [cel, drawing])]),
    );
  if (hasErrors(again.diagnostics) || numbers(again) !== numbers(before))
    throw new Error('with these `cels` lines a drawing would have another number; nothing was written');
  return after;
}

function nothing(job: Job): Diagnostic {
  return diagnose('no-cuts', { file: job.name, start: 0, end: 0 }, { variant: 'shared', for: 'number' });
}

function twoCounts({ levels }: SolvedShot, chosen: (level: string) => boolean): Diagnostic[] {
  return levels.flatMap((level) => {
    const passage = chosen(level.name) ? unpinnable(level) : null;
    if (!passage) return [];
    const { from, to, drawings, span } = passage;
    return [
      diagnose(
        'number-two-counts',
        span,
        { from, to, level: level.name, count: drawings.length },
        { notes: [{ note: 'own-key', key: `${to}a` }] },
      ),
    ];
  });
}

/** Whether it is open which way some pinned in-betweens are on: then new drawings might pass for them. */
function unsettled({ tree, diagnostics }: Compiled, chosen: (level: string) => boolean): boolean {
  return diagnostics.some(
    ({ code, span }) =>
      code === 'cels-passage' &&
      tree!.statements.some(
        (each) =>
          each.kind === 'cels' &&
          chosen(each.level.text) &&
          each.span.start <= span.start &&
          span.end <= each.span.end,
      ),
  );
}
