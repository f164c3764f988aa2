/** Command lines that are wrong, one for each sentence of the two codes for wrong use, and what English says to them. */

import { memoryHost } from '../../../src/host/memory-host.js';

const cut = (number: number | string, lines = 'A: 1..') => `cut ${number}\ntime 1+0\n${lines}\n`;

export function usageWorld() {
  const host = memoryHost({
    'a.cut': cut(1, 'A: 1--2..'),
    'b.cut': cut(2),
    'odd;name.cut': cut(5),
    'pinned.cut': cut(3, 'A: 1--2..\ncels A 1 1.1 1.2 2'),
    'unused.cut': cut(4, 'A: 1--2..\nB: 1..\ncels A 1 1.1 1.2 2\ncels B 1'),
    'house.cut': 'phrase walk = 1--2--\n',
    'table.csv': 'frame,A\n1,1\n',
    'exposures.csv': 'cut,level,frame,drawing\n1,A,1,1\n2,A,1,1\n',
    'ep/episode.yaml': 'cuts: "*.cut"\n',
    'ep/1.cut': cut(1),
    'ep/2.cut': cut(2),
    'other/episode.yaml': 'cuts: "*.cut"\n',
    'other/3.cut': cut(3),
  });
  host.revisions.set('HEAD', memoryHost({ 'a.cut': cut(1) }));
  host.revisions.set('BEFORE', memoryHost({ 'notes.txt': '' }));
  return host;
}

export const OPTION_VALUES: readonly (readonly [string | readonly string[], string])[] = [
  ['build a.cut --rows many', '`--rows` takes a number of rows, such as 144.'],
  [
    'build a.cut --rows 100',
    '`--rows 100` does not do: a page has whole seconds of 24 rows, on A4 from 24 to 192; 96 would do.',
  ],
  ['build a.cut --paper A9', '`--paper` takes A4, A3, B4, B5, letter, legal, tabloid, C4 or kaku2.'],
  ['build a.cut --paper XXXX', '`--paper` takes A4, A3, B4, B5, letter, legal, tabloid, C4 or kaku2.'],
  ['build a.cut --only cover --up 3', '`--up` takes 2, 4 or 8.'],
  ['build a.cut --shard 9/8', '`--shard` takes a part of a number of parts, from 1/8 to 8/8.'],
  ['check a.cut -j 65', '`--jobs` takes a number of threads, from 1 to 64.'],
  ['build a.cut --strict=yes', '`--strict` takes no value.'],
  ['build a.cut --paper', '`--paper` needs a value.'],
  ['build a.cut --pages 0', '`--pages` takes pages counted from 1, such as 2, 2-3, 2- or 1,4-6.'],
  ['build a.cut --pages 9', '`--pages 9` chooses no page of 1 cut.'],
  ['build b.cut --only charts', 'No in-between, so no chart, in 1 cut.'],
  ['build a.cut --only camera', 'No camera work, so no camera chart, in 1 cut.'],
  [
    'build a.cut --only table',
    'Nothing moves, or only at constant speed or in swings, so no move table, in 1 cut.',
  ],
  ['build a.cut --only strip', 'No graduations, so no scale strip, in 1 cut.'],
  ['build a.cut --only overlay', 'No camera work, so no field overlay, in 1 cut.'],
  [['build', 'a.cut', '-o', ''], '`--output` takes a file or a folder; nothing stands here.'],
  ['build a.cut --since HEDA', '`--since HEDA` does not do: git knows no revision `HEDA`.'],
  ['show a.cut --width 9', '`--width` takes a whole number from 40 to 1000.'],
  [
    'show a.cut --from x',
    "`--from` takes a place on the sheet, such as 37, 1+12 or 2'08; the first frame is 1.",
  ],
  ['show a.cut --from 9 --to 3', '`--to 3` lies before `--from 9`.'],
  ['show a.cut --home nowhere', '`--home` takes a folder that is there.'],
  ['show a.cut --levels AA', 'There is no level `AA` here.'],
  ['show a.cut --levels Z1', 'There is no level `Z1` here.'],
  ['show a.cut --from 999', '`--from 999` lies behind the end: the sheet has 24 frames.'],
  ['show a.cut b.cut --from 999', '`--from 999` lies behind the end: the longest sheet has 24 frames.'],
  ['list ep -o list.doc', '`--output` takes a file whose name ends in .pdf, .csv or .json.'],
  [
    'export ep --edit edl --start 1:00',
    '`--start` takes hours, minutes, seconds and frames, such as 01:00:00:00.',
  ],
  [
    'export ep --edit edl --start 01:00:00:24',
    '`--start` takes frames up to 23: the cuts run at 24 a second.',
  ],
  ['number a.cut --new A:1.1', 'The numbers of level A are not pinned: it has no `cels` line.'],
  [
    'number pinned.cut --new A:1.1',
    'An in-between that was put in is named by the one before it and a letter, such as `A:1.0a`.',
  ],
  ['number pinned.cut --gone A:1.7', 'The `cels` line of level A has no 1.7.'],
  [
    'number pinned.cut --gone A1.1',
    '`--gone` takes a level and the name of an in-between, such as `A:1.1a`.',
  ],
  [
    'number pinned.cut --gone A:1.1',
    'Level A still shows as many in-betweens from key 1 to key 2 as are on paper; take the drawing out of the timeline first, then say that it is gone.',
  ],
  [
    'number unused.cut --new B:1.1a',
    'The timeline does not show this drawing; write the in-between into it first, then number it.',
  ],
  ['number a.cut --level AA', 'There is no level `AA`.'],
  ['number a.cut --level Z1', 'There is no level `Z1`.'],
  ['new cut 1/2', 'A cut is numbered with letters and digits, such as 13 or 12A.'],
  ['new cut 13 --time 5s', "`--time` takes a length such as 5+0, 120 or 8'04. `5s` is written `5+0` here."],
  ['new cut 13 --levels A;B', '`--levels` takes names of levels with commas between, such as A,B.'],
  [
    'new cut 13 --title ☔',
    'The new cut would not be one: `☔` (U+2614) is not in the font and cannot be printed.',
  ],
  ['new cut 13 --like a', 'There is no episode here, and no file `a`, that a cut could be like.'],
  ['new cut 13 -o 13.txt', 'The name of a cut ends in .cut.'],
  ['compare a.cut b.cut --output a.txt', '`--output` takes a file whose name ends in .pdf.'],
  ['list a.cut --since BEFORE', 'There were no cuts yet at `BEFORE`.'],
  ['compare a.cut --since HEDA', '`HEDA` cannot be read: git knows no revision `HEDA`.'],
  ['progress ep 1 kye done', '`kye` is no stage; did you mean `key`?'],
  [
    'progress ep 1 sculpture done',
    '`sculpture` is no stage, which would be layout, key, check, in-between, finish or shoot.',
  ],
  ['progress ep 1 key lost', '`lost` is no state, which would be started, done or retake.'],
  ['progress ep 9 key done', 'The episode has no cut 9.'],
  ['progress ep --date 9.3.27', '`--date` takes a day with the year first, such as 2027-03-19.'],
  ['completion bas', '`completion` is for bash, zsh or fish; did you mean `bash`?'],
  ['completion powershell', '`completion` is for bash, zsh or fish.'],
  ['watch a.cut --preview 70000', '`--preview` takes a port from 1 to 65535, or nothing.'],
  ['blank --pages 0', '`--pages` takes a number from 1 to 500.'],
  ['list ep --only list', '`--only` takes cuts or rhythm.'],
  [
    'shoot a.cut -o a.gif',
    '`--output` takes a film whose name ends in .mp4, .mov, .mkv or .webm, a folder, or the names of pictures, such as frames/%04d.png.',
  ],
  [
    'shoot a.cut -o %04d.jpg',
    'Names of pictures have one number in them and end in .png, such as frames/%04d.png.',
  ],
  [
    'shoot a.cut --size 4x4',
    '`--size` takes width and height in pixels, each from 16 to 8192, such as 960x540.',
  ],
];

export const WRONG_ARGUMENTS: readonly (readonly [string | readonly string[], string])[] = [
  [
    'compare --git a.cut b.cut',
    '`--git` takes the seven words that git gives to a diff command; git calls it, not you.',
  ],
  ['list ep --csv --json', '`--csv` and `--json` do not go together.'],
  ['list ep --json -o list.csv', '`--json` and `list.csv` do not go together.'],
  ['list ep --only cuts', '`--only` says what to print; give `--output` a name that ends in .pdf.'],
  [
    'list ep other',
    'A list is of one episode, and these cuts belong to 2: `ep/episode.yaml`, `other/episode.yaml`.',
  ],
  ['list a.cut ep', 'A list is of one episode, and these cuts belong to 2: none, `ep/episode.yaml`.'],
  [
    'progress 12 key',
    '`progress` takes an episode, or a cut, a stage and started, done or retake, as in `cutwright progress 12 key done`.',
  ],
  [
    'progress ep --by Quoy',
    '`--by` goes with a row that is written, as in `cutwright progress 12 key done`.',
  ],
  ['progress ep 1 key done --csv', '`--csv` and `done` do not go together.'],
  ['compare a.cut', 'Name the old and the new version, or `--since` and a revision.'],
  ['compare a.cut b.cut b.cut', 'Two versions are compared, an old and a new one.'],
  ['compare - -', 'Standard input can be only one of the two.'],
  ['export ep other --edit otio', 'These cuts are of 2 episodes; an edit is of one.'],
  [
    'explain timeline-shrt',
    'There is no statement, word or code `timeline-shrt`; did you mean `timeline-short`?',
  ],
  [
    'explain qqqqqqqq',
    'There is no statement, word or code `qqqqqqqq`; `cutwright explain` lists all of them.',
  ],
  ['watch -', 'Standard input is not saved; name files.'],
  ['watch a.cut -o -', '`watch` writes again and again; give `--output` a file or a folder.'],
  ['build a.cut --changed --since HEAD', '`--changed` and `--since` are two comparisons; give one of them.'],
  [
    'build a.cut --pages changed',
    '`--pages changed` needs something to compare with: `--changed` (the last build) or `--since REV`.',
  ],
  [
    'build a.cut --changed --pages 2',
    '`--changed` finds the pages itself; with it, `--pages` takes only `changed`.',
  ],
  [
    'build a.cut --since HEAD --pages 2',
    '`--since` finds the pages itself; with it, `--pages` takes only `changed`.',
  ],
  [
    'build a.cut --changed -o -',
    '`--changed` compares with the file of the last build; standard output has none.',
  ],
  ['build - --since HEAD', 'Standard input has no revisions; `--since` needs files.'],
  [
    'build a.cut --marked-against HEAD --only charts',
    '`--marked-against` marks the sheets; `--only charts` prints none.',
  ],
  [
    'build a.cut --changed --marked-against HEAD --pages changed',
    '`--marked-against` prints whole cuts, since their columns make room for the marks; leave out `--pages changed`.',
  ],
  ['build a.cut --up 4', '`--up` puts the covers of several cuts on a page; it goes with `--only cover`.'],
  ['build a.cut --only cover --up 4 --changed', '`--up` and `--changed` do not go together.'],
  ['build - --marked-against HEAD', 'Standard input has no revisions; `--marked-against` needs files.'],
  ['new cut --from-csv exposures.csv -o 1.cut', 'The table has 2 cuts; name a folder.'],
  ['shoot a.cut -o -', 'A film is no text for standard output; give `--output` a file or a folder.'],
  ['new cut', 'A new cut needs its number, as in `cutwright new cut 13`.'],
  ['new cut 13 --from-csv table.csv --like 12', '`--like` and `--from-csv` do not go together.'],
  [
    'new cut 13 --from-csv exposures.csv',
    'The table has 2 cuts, which have their own numbers; leave this one out.',
  ],
  [
    'new cut --from-csv table.csv',
    'The table does not say which cut it is; name its number, as in `cutwright new cut 13 --from-csv grid.csv`.',
  ],
  [
    'compare HEAD a.cut',
    '`HEAD` is a revision: write `HEAD:` for all that it holds, `HEAD:PATH` for a part, or compare with `--since HEAD`.',
  ],
  ['compare HEDA:a.cut a.cut', '`HEDA:a.cut` cannot be read: git knows no revision `HEDA`.'],
  ['compare - --since HEAD', 'Standard input has no past; name a file with `--since`.'],
  ['compare a.cut b.cut --by me', '`--by` is printed on the note: it goes with `--output`.'],
  ['compare pinned.cut ep', '`ep` holds no cut 3.'],
  [
    'compare house.cut a.cut',
    'The file holds only what cuts share, and makes no cut that could be compared.',
  ],
  ['export a.cut --start 01:00:00:00', '`--start` belongs to an edit: it goes with `--edit`.'],
  ['export a.cut --edit otio --table drawings', '`--edit` and `--table` do not go together.'],
  ['export a.cut --edit otio --pixels', '`--edit` and `--pixels` do not go together.'],
  ['export a.cut b.cut', '2 cuts do not go into one JSON text; name a folder with `--output`.'],
  ['check', '`cutwright check` needs files; see `cutwright check --help`.'],
  [
    'build',
    '`cutwright build` needs files: this folder lies in no episode (there is no episode.yaml here or above); see `cutwright build --help`.',
  ],
  ['new', '`cutwright new` needs to be told what to begin: episode or cut; see `cutwright new --help`.'],
  ['completion', '`cutwright completion` needs a shell; see `cutwright completion --help`.'],
  ['explain pan A', '`cutwright explain` takes fewer words than these; see its `--help`.'],
  ['blank a.cut', '`cutwright blank` takes fewer words than these; see its `--help`.'],
  ['number a.cut b.cut --new A:1.1a', 'Which drawing is new or gone is said of one cut at a time.'],
  ['new film', '`new` makes an episode or a cut, so one of these words comes next.'],
  ['new cute', '`new` makes an episode or a cut; did you mean `cut`?'],
  ['new episode x --like 1', '`--like` is for a new cut; an episode has none.'],
  ['build a.cut b.cut -o -', '2 cuts do not go into standard output; name a folder.'],
  ['build a.cut b.cut -o one.pdf', '2 cuts do not go into one file; name a folder.'],
  ['build a.cut - -o out/', 'Standard input has no name; give `--output` a file.'],
  [
    'build a.cut b.cut --one-file',
    'These cuts are not one whole episode, so their file has no name; give `--output` one, such as cuts.pdf.',
  ],
  [
    'build a.cut -o a.pdf --plan make',
    '`--plan` prints each cut into a file of its own; give `--output` a folder.',
  ],
  ['build odd;name.cut --plan make', 'make cannot be told of a file with this name: `odd;name.cut`.'],
];

/** In `usageEpisode`. */
export const IN_EPISODE: readonly (readonly [string, string])[] = [
  ['new cut 13 --like HARBUOR', 'The episode has no cut HARBUOR; did you mean HARBOUR?'],
  ['new cut 13 --like spring', 'The episode has no cut spring.'],
];

/** An episode of one cut, HARBOUR. */
export const usageEpisode = () => memoryHost({ 'episode.yaml': '', 'harbour.cut': cut('HARBOUR') });
