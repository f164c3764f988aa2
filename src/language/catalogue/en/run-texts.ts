import { plural, ranges } from '../../../words/number-format.js';
import type { NoEarlierPrint, PageChanges, RunTexts } from '../catalogue-entry.js';

const cuts = (count: number): string => plural(count, 'cut');

function notCompared(reason: NoEarlierPrint): string {
  switch (reason.why) {
    case 'not-printed':
      return 'not printed before';
    case 'new':
      return 'new';
    case 'no-print':
      return 'as the file there is no print to compare with';
    case 'one-cut':
      return 'as the file there is of one cut';
    case 'several-cuts':
      return 'as the file there is of several cuts';
    case 'pages-missing':
      return 'as the file did not hold all';
    case 'new-since':
      return `new since ${reason.revision}`;
    case 'errors-at':
      return `as it had errors at ${reason.revision}`;
  }
}

/** `cut 12: pages 2-3 of 5`; with the labels that stand on the paper where they are others. */
function pagesDiffer({ cut, pages, differing, labels, gone, notCompared: why }: PageChanges): string {
  if (why !== null)
    return `cut ${cut}: ${pages === 1 ? '1 page' : `all ${pages} pages`}, ${notCompared(why)}`;
  const lost = gone.length === 0 ? '' : `; no more: ${gone.join(', ')}`;
  if (differing.length === 0) return `cut ${cut}: no page of ${pages} differs${lost}`;
  const called = labels?.map(({ label, fresh }) => `${label}${fresh ? ' new' : ''}`);
  const named = called ? ` (${called.join(', ')})` : '';
  return `cut ${cut}: ${differing.length === 1 ? 'page' : 'pages'} ${ranges(differing)} of ${pages}${named}${lost}`;
}

const numbered = (drawings: readonly { readonly cel: string; readonly name: string }[]): string =>
  drawings.map(({ cel, name }) => `${cel} is ${name}`).join(', ');

export const run: RunTexts = {
  cuts,
  sharedFiles: (count) => plural(count, 'shared file'),
  pages: (count) => plural(count, 'page'),
  files: (count) => plural(count, 'file'),
  errors: (count) => plural(count, 'error'),
  warnings: (count) => plural(count, 'warning'),
  tally: (errors, warnings, hints) => {
    const counted = [
      [errors, 'error'],
      [warnings, 'warning'],
      [hints, 'hint'],
    ] as const;
    const parts = counted.flatMap(([count, word]) => (count > 0 ? [plural(count, word)] : []));
    return parts.join(', ') || 'nothing wrong';
  },
  checked: (what, tally) => `${what} checked: ${tally}`,
  wrote: (name, what) => `wrote ${name}${what === undefined ? '' : `: ${what}`}`,
  wroteToStandardOutput: (what) => `wrote ${what} to standard output`,
  wroteFiles: (files, pages, folder) =>
    pages === null
      ? `wrote ${plural(files, 'file')}${folder === null ? '' : ` in ${folder}`}`
      : `wrote ${plural(files, 'file')}, ${plural(pages, 'page')}${folder === null ? '' : `, in ${folder}`}`,
  notPrinted: (names, more) => `not printed: ${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}`,
  cut: (number) => `cut ${number}`,
  seeManifest: (file) => `see ${file}`,
  nothingToPrint: 'nothing to print',
  faultOfProgram: 'fault of the program',
  notWritten: 'not written',
  unchanged: (count, revision) => `${cuts(count)} unchanged${revision === null ? '' : ` since ${revision}`}`,
  pagesDiffer,
  cutGone: (number) => `cut ${number}: no cut of the episode any more`,
  cutsReordered: 'the cuts stand in another order',
  orphanedFile: (file, cut, now) =>
    `${file}: ${now === null ? 'no cut of the episode any more' : `cut ${cut} goes to ${now} now`}`,
  progress: (activity, done, total, of) => `${activity}: ${done} of ${total} ${of}`,
  progressBar: (activity, done, total) => `${activity} ${done} of ${total}`,
  shard: (part, count, all) => `shard ${part}: ${count} of ${cuts(all)}`,
  wrotePlan: (file, count, command) => `wrote ${file}: ${cuts(count)}; \`${command}\` prints them`,
  notExported: (count, tally) => `${cuts(count)} not exported: ${tally}`,
  noEdit: (withErrors, tally) =>
    `no edit written: ${withErrors > 0 ? `${cuts(withErrors)} with errors, ` : ''}${tally}`,
  tableOf: (table, count) => `${table} of ${cuts(count)}`,
  notShot: (count, tally) => `${cuts(count)} not shot: ${tally}`,
  film: (length, pictures, frames, missing, asked) => {
    const drawn =
      missing === 0
        ? ''
        : missing === asked
          ? '; nothing is drawn yet'
          : `; ${missing} of ${plural(asked, 'drawing')} not drawn yet`;
    return `${length}, ${plural(frames, pictures ? 'picture' : 'frame')}${drawn}`;
  },
  noNote: 'nothing differs, so no note is printed',
  mendsWritten: (count) => `${plural(count, 'mend')} written`,
  nothingWritten: 'nothing was written',
  rowWritten: (file, { cut, stage, state, date, person }) =>
    `${file}: cut ${cut}: ${stage} ${state}, ${date}${person === '' ? '' : `, ${person}`}`,
  compared: (count, differ) =>
    `${cuts(count)} compared: ${differ === 0 ? 'all the same' : `${differ} ${differ === 1 ? 'differs' : 'differ'}`}`,
  unreadStatements: (file, count) =>
    `${file}: ${plural(count, 'statement')} could not be read and ${count === 1 ? 'was left as it is' : 'were left as they are'}`,
  formatted: (files, { changed, same, unread, failed }, dry) => {
    const parts = [
      ...(changed > 0 ? [`${changed} ${dry ? 'to be formatted' : 'formatted'}`] : []),
      ...(same > 0 ? [`${same} as ${same === 1 ? 'it' : 'they'} should be`] : []),
      ...(unread > 0 ? [`${unread} with statements that cannot be read`] : []),
      ...(failed > 0 ? [`${failed} not formatted`] : []),
    ];
    return `${plural(files, 'file')}: ${parts.join(', ')}`;
  },
  numbered: (count, { changed, rest, failed }, dry, tally) => {
    const parts = [
      ...(changed > 0 ? [`${changed} ${dry ? 'to be numbered' : 'numbered'}`] : []),
      ...(rest > 0 ? [`${rest} with nothing to add`] : []),
      ...(failed > 0 ? [`${failed} not numbered (${tally})`] : []),
    ];
    return `${cuts(count)}: ${parts.join(', ')}`;
  },
  heard: (count, { changed, rest, failed }, how, tally) => {
    const parts = [
      ...(how === 'lines' ? [`${rest + changed} listened to`] : []),
      ...(how !== 'lines' && changed > 0
        ? [`${changed} ${how === 'written' ? 'written' : 'to be written'}`]
        : []),
      ...(how !== 'lines' && rest > 0 ? [`${rest} with nothing to write`] : []),
      ...(failed > 0 ? [`${failed} not heard (${tally})`] : []),
    ];
    return `${cuts(count)}: ${parts.join(', ')}`;
  },
  pinned: (stretches, dry) =>
    `${dry ? 'not ' : ''}pinned: ${stretches.map(({ from, to }) => (from === to ? from : `${from} to ${to}`)).join(', ')}`,
  named: (drawings, dry) => `${dry ? 'not pinned: ' : ''}${numbered(drawings)}`,
  notUsed: (drawings) =>
    `${drawings.map(({ cel, name }) => `${cel} (${name})`).join(', ')} ${drawings.length === 1 ? 'is' : 'are'} not used any more`,
  sayWhich: (file, count, of, command, answers) => {
    const listed =
      answers.length > 1 ? `${answers.slice(0, -1).join(', ')} or ${answers.at(-1)}` : answers.join();
    return `${file}: say ${count === 1 ? 'which one is' : `which ${count} are`} ${of}: ${command} ${listed}`;
  },
  sayPassage: (file) => `${file}: say in its \`cels\` line which passage is on paper, then number it again`,
  gitDiff: {
    unsettled: (path) => `${path}: the merge is not settled`,
    notCompared: (file, broken) =>
      `${file}: not compared, ${broken === 'both' ? 'both versions have' : `the ${broken} version has`} errors`,
    nothingChanges: (file) => `${file}: nothing changes on the sheet`,
    cutNew: (file, cut) => `${file}: cut ${cut} is new`,
    cutDropped: (file, cut) => `${file}: cut ${cut} is dropped`,
    onlyShared: (file) => `${file}: nothing but what cuts share`,
  },
  next: (command) => `next: ${command}`,
  addToManifest: (count, file) => {
    const it = count > 1 ? ['them all', 'them'] : ['it', 'it'];
    return `the manifest does not list ${it[0]} yet: add ${it[1]} to \`cuts:\` in ${file}`;
  },
  watching: (count, withErrors) =>
    `watching ${cuts(count)}${withErrors > 0 ? `, ${withErrors} with errors` : ''}; Ctrl-C ends it`,
  nothingChanges: (name) => `${name}: nothing changes on paper`,
  stillHolds: (file, errors) => `${file}: ${plural(errors, 'error')}; what it said before still holds`,
  lost: (name, gone) => `${name} ${gone ? 'is gone' : 'is watched no more'}`,
  leftAsItIs: (pdf) => `; ${pdf} is left as it is`,
  kept: (name, what, kept) =>
    `${name}: ${what}; ${kept === null ? 'nothing is printed' : `${kept} is kept as it was`}`,
  noPage: (name) => `${name}: no page to print`,
  printed: (name, pdf, pages) => `${name} → ${pdf}, ${plural(pages, 'page')}`,
  shownAt: (url) => `the pages are shown at ${url}`,
  leftOutOfFilm: (count) => `${cuts(count)} left out: there are errors in the text.`,
};
