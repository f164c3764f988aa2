/** The manual page, written out of what the commands take: mdoc, as mandoc and groff read it. */

import type { Command } from 'commander';
import { type CommandFacts, factsOf, type OptionFacts } from '../src/command/completion.js';

export function manualPage(commands: readonly Command[], version: string): string {
  const facts = factsOf(commands);
  return [
    '.\\" Written out of the program: UPDATE=1 npx vitest run tests/manual.test.ts',
    '.Dd $Mdocdate$',
    '.Dt CUTWRIGHT 1',
    `.Os cutwright ${version}`,
    '.Sh NAME',
    '.Nm cutwright',
    '.Nd turn the text of a cut into its exposure sheet on paper',
    '.Sh SYNOPSIS',
    ...facts.flatMap(synopsis),
    '.Sh DESCRIPTION',
    '.Nm',
    'reads texts that describe a cut of hand-drawn animation, one file a cut, and prints its exposure sheet, in-between charts and camera',
    'charts; it checks, counts, compares, formats and exports them.',
    '.Pp',
    'Where files are read, a file is a cut, a folder means the cuts in it,',
    '.Pa episode.yaml',
    'means those that it lists, and',
    '.Sq -',
    'is standard input.',
    '.Sh COMMANDS',
    '.Bl -tag -width Ds',
    ...facts.flatMap((one, i) => described(one, examplesOf(commands[i]!))),
    '.El',
    '.Sh ENVIRONMENT',
    '.Bl -tag -width CUTWRIGHT_LANGUAGE',
    '.It Ev CUTWRIGHT_LANGUAGE',
    'The language of messages and help, en or ja, unless',
    '.Fl -language',
    'says another.',
    'It is not that of the paper, which is the',
    '.Cm labels',
    'of the episode or of the command line.',
    'JSON is English in every language.',
    '.It Ev LC_ALL , LC_MESSAGES , LANG',
    'The first that is set is the language where nothing else says one; English if it is none of these or not UTF-8.',
    '.It Ev NO_COLOR',
    'If it is set, messages have no colour on a terminal.',
    '.It Ev SOURCE_DATE_EPOCH',
    'Seconds since 1970 that stand for the current time wherever a date is written.',
    '.El',
    '.Sh FILES',
    '.Bl -tag -width episode.yaml',
    '.It Pa *.cut',
    'The text of a cut, UTF-8.',
    '.It Pa episode.yaml',
    'What holds for all cuts of an episode.',
    'It is found by walking up from the cut.',
    '.It Pa house.cut',
    'By custom, phrases, fields and levels that several cuts use.',
    '.El',
    '.Sh EXIT STATUS',
    '.Bl -tag -width Ds',
    '.It 0',
    'Fine.',
    '.It 1',
    'There are errors in the texts; what has none was still printed.',
    'With',
    '.Cm compare ,',
    'the two differ.',
    '.It 2',
    'Wrong use: an unknown option, a file that is not there, an output that cannot be written.',
    '.El',
    '.Sh EXAMPLES',
    'Say what is wrong with a cut, then print it:',
    '.Bd -literal -offset indent',
    'cutwright check c012.cut',
    'cutwright build c012.cut',
    '.Ed',
    '.Pp',
    'Print what has changed in the episode since the last build:',
    '.Dl cutwright build --changed',
    '',
  ]
    .filter((line, i, all) => line !== '' || i === all.length - 1)
    .join('\n');
}

/** Lines of the examples under a command's help, `line   what`. */
function examplesOf(command: Command): readonly (readonly [line: string, what: string])[] {
  let text = '';
  command.configureOutput({ writeOut: (more) => (text += more) }).outputHelp();
  return [...text.matchAll(/^ {2}(\S.*?) {3,}(\S.*)$/gm)]
    .map(([, line, what]) => [line!, what!] as const)
    .filter(([line]) => line.includes('cutwright'));
}

function synopsis({ name, options, args }: CommandFacts): string[] {
  return [
    '.Nm',
    `.Cm ${name}`,
    ...(options.length > 1 ? ['.Op Ar options'] : []),
    ...args.map(({ name: word, required, variadic }) => {
      const said = `Ar ${word}${variadic ? ' ...' : ''}`;
      return required ? `.${said}` : `.Op ${said}`;
    }),
  ];
}

function described(command: CommandFacts, examples: ReturnType<typeof examplesOf>): string[] {
  const { name, description, options, args } = command;
  return [
    `.It Cm ${name}`,
    roff(description),
    '.Bl -tag -width Ds -compact',
    ...args.flatMap((one) => [`.It Ar ${one.name}`, roff(one.description)]),
    ...options.filter(({ long }) => long !== '--help').flatMap(option),
    '.El',
    ...(examples.length > 0 ? ['.Pp', 'Examples:', '.Bd -literal -offset indent -compact'] : []),
    ...examples.flatMap(([line, what]) => [roff(`# ${what}`), roff(line)]),
    ...(examples.length > 0 ? ['.Ed'] : []),
  ];
}

function option({ long, short, value, description }: OptionFacts): string[] {
  const flag = (text: string): string => `Fl ${text.slice(1)}`;
  const names = [...(short ? [`${flag(short)} ,`] : []), flag(long)].join(' ');
  return [`.It ${names}${value ? ` Ar ${value}` : ''}`, roff(description)];
}

/** Text: nothing in it is taken for a request or an escape; each sentence has a line of its own. */
function roff(text: string): string {
  return text
    .replace(/\\/g, '\\e')
    .replace(/\n/g, ' ')
    .split(/(?<=[.!?]) (?=\p{Lu})/u)
    .map((line) => (/^[.']/.test(line) ? `\\&${line}` : line))
    .join('\n');
}
