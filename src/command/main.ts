/** The command line: which command is meant, what it leaves with. Each command is loaded only when it is called. */

import { Command, CommanderError } from 'commander';
import { version } from '../../package.json';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import { type Host, reasonOf } from '../host/host.js';
import { loadMessages } from '../language/message.js';
import { nearest } from '../language/suggest.js';
import { USER_LANGUAGES, userLanguage } from '../language/user-language.js';
import type { CommandContext } from './command-options.js';
import type { HelpTexts } from './help-language.js';
import { inLanguage, languageBehind } from './language-option.js';

interface Entry {
  readonly summary: string;
  readonly load: () => Promise<{ define: (command: Command, context: CommandContext) => Command }>;
}

/** With what `inLanguage` looks for. */
const LANGUAGE = '--language <language>';
const LANGUAGE_HELP = 'language of messages and help; --labels is that of the paper';

const COMMANDS: Readonly<Record<string, Entry>> = {
  check: { summary: 'say what is wrong with cuts', load: () => import('./check.js') },
  build: { summary: 'print cuts, or a whole episode, to PDF', load: () => import('./build.js') },
  export: { summary: 'give cuts as JSON or CSV, an episode as an edit', load: () => import('./export.js') },
  format: { summary: 'put cuts into the usual layout', load: () => import('./format.js') },
  shoot: { summary: 'see cuts move: a film, or pictures', load: () => import('./shoot.js') },
  number: { summary: 'pin the numbers of drawings that exist', load: () => import('./number.js') },
  listen: {
    summary: 'find in the recording when each word is spoken',
    load: () => import('./listen.js'),
  },
  list: { summary: 'list the cuts of an episode: times, drawings, artists', load: () => import('./list.js') },
  progress: {
    summary: 'tell where every cut is in production, and write it down',
    load: () => import('./progress.js'),
  },
  compare: { summary: 'say what differs between two versions of a cut', load: () => import('./compare.js') },
  watch: { summary: 'print cuts again whenever they are saved', load: () => import('./watch.js') },
  blank: { summary: 'print empty forms to write on by hand', load: () => import('./blank.js') },
  show: { summary: 'show the sheet in the terminal', load: () => import('./show.js') },
  new: { summary: 'begin an episode or a cut', load: () => import('./new.js') },
  completion: {
    summary: 'let the shell complete commands and options',
    load: () => import('./completion.js'),
  },
  explain: { summary: 'say what a statement or a problem means', load: () => import('./explain.js') },
  lsp: {
    summary: 'serve an editor: problems, completion, renaming as you type',
    load: () => import('./lsp.js'),
  },
};

/** Runs the command that `argv` (without node and script) says. The exit status: 0 fine, 1 errors in the text, 2 wrong use. Never throws. */
export async function main(argv: readonly string[], world: Host): Promise<number> {
  const host = inLanguage(world, argv);
  await loadMessages(userLanguage(host));
  try {
    return await run(languageBehind(argv), host);
  } catch (fault) {
    if (fault instanceof UsageError) return complain(fault, argv, host);
    const code = (fault as NodeJS.ErrnoException).code;
    if (code !== undefined && (fault as NodeJS.ErrnoException).syscall === 'write') {
      return complain(
        new UsageError('output-unwritable', null, { output: null, reason: reasonOf(fault) }),
        argv,
        host,
      );
    }
    const words = fault instanceof Error ? fault.message : String(fault);
    return complain(
      new UsageError('internal-fault', argv[0] ?? null, { onCut: false, error: words }),
      argv,
      host,
    );
  }
}

async function run(argv: readonly string[], host: Host): Promise<number> {
  const [first, ...rest] = argv;
  if (first === undefined) {
    host.error(await help(host));
    return 2;
  }
  if (first === '--version' || first === '-V') {
    host.out(`cutwright ${version}\n`);
    return 0;
  }
  if (first === '--help' || first === '-h' || (first === 'help' && (rest[0] ?? '-').startsWith('-'))) {
    host.out(await help(host));
    return 0;
  }
  const [name, args] = first === 'help' ? [rest[0]!, ['--help']] : [first, rest];
  const entry = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!entry) throw unknownCommand(name, host);
  const texts = wantsHelp(name, args) ? await helpTexts(host) : null;
  const call = callOf(host, texts);
  await parse(await made(name, entry, call), args);
  return call.status;
}

const helps = (words: readonly string[]): boolean => words.includes('--help') || words.includes('-h');

/** Whether anything of the help's texts will be seen: nobody else has to read the table of another language. */
const wantsHelp = (name: string, args: readonly string[]): boolean =>
  helps(args) || name === 'completion' || name === 'explain' || args.includes('--legend');

async function helpTexts(host: Host): Promise<HelpTexts | null> {
  if (userLanguage(host) === 'en') return null;
  return (await import('./ja/help-texts-ja.js')).help;
}

function callOf(host: Host, help: HelpTexts | null): CommandContext {
  const call: CommandContext = { host, status: 0, help, commands: () => all(call) };
  return call;
}

async function made(name: string, entry: Entry, call: CommandContext): Promise<Command> {
  const [{ define }, { choice }] = await Promise.all([entry.load(), import('./command-options.js')]);
  const description = described(entry);
  const option = choice(LANGUAGE, LANGUAGE_HELP, USER_LANGUAGES);
  if (!call.help)
    return define(newCommand(new Command(title(name)), description, call.host), call).addOption(option);
  const { TranslatedCommand } = await import('./help-language.js');
  const command = new TranslatedCommand(title(name), call.help);
  define(newCommand(command, description, call.host), call).addOption(option);
  return command.translate();
}

function all(call: CommandContext): Promise<readonly Command[]> {
  return Promise.all(Object.entries(COMMANDS).map(([name, entry]) => made(name, entry, call)));
}

/** Every command with its options, for what is written out of them. */
export async function allCommands(host: Host): Promise<readonly Command[]> {
  await loadMessages(userLanguage(host));
  return callOf(host, await helpTexts(host)).commands();
}

const title = (name: string): string => `cutwright ${name}`;

/** The summary as a sentence. */
const described = ({ summary }: Entry): string => `${summary.charAt(0).toUpperCase()}${summary.slice(1)}.`;

function newCommand(command: Command, description: string, host: Host): Command {
  return command
    .description(description)
    .helpOption('-h, --help', 'this text')
    .exitOverride()
    .configureOutput({ writeOut: (text) => host.out(text), writeErr: () => {}, getOutHelpWidth: () => 100 });
}

async function parse(command: Command, args: readonly string[]): Promise<void> {
  try {
    await command.parseAsync(args, { from: 'user' });
  } catch (fault) {
    if (!(fault instanceof CommanderError)) throw fault;
    if (fault.exitCode === 0) return;
    throw lineFault(fault, command);
  }
}

/** What the library complains of, in our words and with a guess. */
function lineFault(fault: CommanderError, command: Command): UsageError {
  const quoted = /'([^']*)'/.exec(fault.message)?.[1] ?? '';
  const flag = quoted.split(/[ ,]+/).find((word) => word.startsWith('--')) ?? quoted;
  switch (fault.code) {
    case 'commander.unknownOption': {
      const [plain = ''] = flag.split('=');
      if (plain !== flag && command.options.some(({ long }) => long === plain)) {
        return new UsageError('option-value', flag, { variant: 'no-value', option: plain }, plain);
      }
      const known = command.options.flatMap(({ long, short }) => [long, short]).filter((one) => one != null);
      const offer = nearest(flag, [...known, '--help']);
      return new UsageError(
        'unknown-option',
        flag,
        { variant: 'of-command', command: command.name(), option: flag, guess: offer ?? null },
        offer,
      );
    }
    case 'commander.optionMissingArgument':
      return new UsageError('option-value', null, { variant: 'value-missing', option: flag });
    case 'commander.missingArgument':
      return new UsageError('wrong-arguments', null, {
        variant: 'missing',
        command: command.name(),
        argument: quoted,
      });
    case 'commander.excessArguments':
      return new UsageError('wrong-arguments', command.args.at(-1) ?? null, {
        variant: 'too-many',
        command: command.name(),
      });
    default:
      return new UsageError('wrong-arguments', null, {
        variant: 'library',
        message: fault.message.replace(/^error: /, ''),
      });
  }
}

function unknownCommand(name: string, host: Host): UsageError {
  if (name.startsWith('-') && name !== '-') {
    return new UsageError('unknown-option', name, { variant: 'before-command', option: name });
  }
  const offer = nearest(name, Object.keys(COMMANDS));
  if (offer) return new UsageError('unknown-command', name, { variant: 'guess', name, guess: offer }, offer);
  if (host.kind(name) !== 'none') {
    return new UsageError('unknown-command', name, { variant: 'file', name });
  }
  return new UsageError('unknown-command', name, {
    variant: 'none',
    name,
    commands: Object.keys(COMMANDS),
  });
}

async function complain(fault: UsageError, argv: readonly string[], host: Host): Promise<number> {
  const [{ ConsoleReporter }, { usageDiagnostic }] = await Promise.all([
    import('./console-reporter.js'),
    import('./usage-diagnostic.js'),
  ]);
  const json = argv.some(
    (word, i) => word === '--format=json' || (word === 'json' && argv[i - 1] === '--format'),
  );
  const reporter = new ConsoleReporter(host, json ? 'json' : 'human', false);
  const { diagnostic, source } = usageDiagnostic(fault, argv);
  reporter.report([diagnostic], new Map([[COMMAND_LINE, source]]));
  reporter.finish();
  return 2;
}

async function help(host: Host): Promise<string> {
  const texts = await helpTexts(host);
  const said = (entry: Entry): string =>
    texts ? (texts.lines[described(entry)] ?? entry.summary).replace(/。$/, '') : entry.summary;
  const rows = Object.entries(COMMANDS).map(([name, entry]) => `  ${name.padEnd(10)}  ${said(entry)}`);
  if (texts) return texts.program(rows.join('\n'));
  return `cutwright turns the text of a cut into its exposure sheet on paper.

  cutwright check c012.cut      say what is wrong with it
  cutwright build c012.cut      write c012.pdf, ready to print

Commands:
${rows.join('\n')}

Each takes several files, folders, or an episode.yaml; - is standard input.
"cutwright COMMAND --help" shows its options, with examples.
Messages are in the language of --language, CUTWRIGHT_LANGUAGE or the system; that of the paper is --labels.
`;
}
