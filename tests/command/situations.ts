/** Faults of files, of the manifest and of the command line, made to happen: one entry for each code of that sort. */

import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { installFilmProgram } from '../shoot/film-program.js';
import { synthesise } from '../sound/speech-synthesis.js';
import { tone, wave } from '../sound/wave-writer.js';
import { CUT } from './run.js';

export interface Situation {
  readonly files: Readonly<Record<string, string | Uint8Array>>;
  /** What cannot be said by files alone. */
  readonly prepare?: (host: MemoryHost) => void;
  /** A command line that meets the fault, and what it leaves with. */
  readonly failing: readonly string[];
  readonly status: 0 | 1 | 2;
  /** Whatever mends it: in the world, or on the command line, or both. */
  readonly mend?: (host: MemoryHost) => void;
  readonly mended: readonly string[];
}

const set = (path: string, text: string) => (host: MemoryHost) =>
  void host.files.set(`/work/${path}`, Buffer.from(text));

/** A manifest that is wrong, and right. */
function manifest(wrong: string, right: string, status: 0 | 1 | 2 = 1): Situation {
  return {
    files: { 'episode.yaml': `${wrong}\n`, 'cuts/c1.cut': CUT },
    failing: ['check', 'episode.yaml'],
    status,
    mend: set('episode.yaml', `${right}\n`),
    mended: ['check', 'episode.yaml'],
  };
}

/** A cut whose bytes are wrong. */
function bytes(content: Uint8Array): Situation {
  return {
    files: { 'a.cut': content },
    failing: ['check', 'a.cut'],
    status: 1,
    mend: set('a.cut', CUT),
    mended: ['check', 'a.cut'],
  };
}

/** A command line that is wrong, and right. */
function line(failing: readonly string[], mended: readonly string[]): Situation {
  return { files: { 'c012.cut': CUT }, failing, status: 2, mended };
}

/** Cut 9 takes its level C from cut 8, which shows `1--2` there. */
function reuse(wrong: string, right: string, status: 0 | 1): Situation {
  const nine = (lines: string) => `cut 9\ntime 1+0\n${lines}\n`;
  return {
    files: { 'episode.yaml': '', '8.cut': 'cut 8\ntime 1+0\nC: 1--2..\n', '9.cut': nine(wrong) },
    failing: ['check', '9.cut'],
    status,
    mend: set('9.cut', nine(right)),
    mended: ['check', '9.cut'],
  };
}

/** Two cuts that are handed over as an edit. */
function edit(form: string, wrong: readonly [string, string], right: readonly [string, string]): Situation {
  const cut = (number: number, lines: string) => `cut ${number}\n${lines}\nA: 1..\n`;
  return {
    files: { 'cuts/1.cut': cut(1, wrong[0]), 'cuts/2.cut': cut(2, wrong[1]) },
    failing: ['export', 'cuts/', '--edit', form],
    status: 1,
    mend: (host) => right.forEach((lines, i) => void set(`cuts/${i + 1}.cut`, cut(i + 1, lines))(host)),
    mended: ['export', 'cuts/', '--edit', form],
  };
}

/** Cuts 12 and 13, which overlap; cut 13 is wrong, and right. */
function join(twelve: string, wrong: string, right: string, status: 0 | 1, failing = '12.cut'): Situation {
  const text = (number: number, lines: string) => `cut ${number}\ntime 2+0\n${lines}\nA: 1..\n`;
  return {
    files: { 'episode.yaml': '', '12.cut': text(12, twelve), '13.cut': text(13, wrong) },
    failing: ['check', failing],
    status,
    mend: set('13.cut', text(13, right)),
    mended: ['check', '.'],
  };
}

/** A cut of two seconds with a recording in which somebody speaks from row 7 to row 36; what is wrong with it, and right. */
function recorded(
  files: Readonly<Record<string, string | Uint8Array>>,
  wrong: string,
  right: string,
  mend: Readonly<Record<string, Uint8Array>> = {},
): Situation {
  const text = (lines: string) => `cut 1\ntime 2+0\nA: 1..\n${lines}\n`;
  return {
    files: { 'sound/c012.wav': SPOKEN, ...files, 'c012.cut': text(wrong) },
    failing: ['check', 'c012.cut'],
    status: 0,
    mend: (host) => {
      set('c012.cut', text(right))(host);
      for (const [path, bytes] of Object.entries(mend)) host.files.set(`/work/${path}`, bytes);
    },
    mended: ['check', 'c012.cut'],
  };
}
const SPOKEN = wave(tone(2, 0.25, 1.5, 4000), { rate: 4000 });
const SPOKEN_CUT = (words: string) =>
  `cut 12\ntime 84\nA: 1..\ntrack "a.wav"\nvoice "なお" 15..52 "${words}"\n`;
const LINE = 'voice "Nao" 7..36 "Wait for me!"';
const TRACK = `track "sound/c012.wav"\n${LINE}`;

const withoutCanvas = (missing: boolean) => (host: MemoryHost) => {
  host.withoutCanvas = missing;
};

/** Small pictures, and a small film. */
const SHOT = ['shoot', 'c012.cut', '--output', 'frames/', '--size', '32x18', '--to', '4'];
const FILMED = ['shoot', 'c012.cut', '--output', 'c012.mp4', '--size', '32x18', '--to', '4'];

/** Rows of `progress.csv` for the cuts 1 and 12, wrong and right. */
function progress(wrong: string, right: string, status: 0 | 1): Situation {
  const table = (rows: string): string => `cut,stage,state,date,person\n${rows}\n`;
  return {
    files: {
      'episode.yaml': '',
      '1.cut': CUT,
      '12.cut': CUT.replace('cut 1', 'cut 12'),
      'progress.csv': table(wrong),
    },
    failing: ['check', '.'],
    status,
    mend: set('progress.csv', table(right)),
    mended: ['check', '.'],
  };
}

export const situations: Readonly<Record<string, Situation>> = {
  'progress-faulty': progress('12,layout,done,19.3.27,L. Quoy', '12,layout,done,2027-03-19,L. Quoy', 1),
  'progress-cut': progress('112,layout,done,2027-03-19,', '12,layout,done,2027-03-19,', 0),
  'progress-twice': progress(
    '12,layout,done,2027-03-18,\n12,layout,done,2027-03-19,',
    '12,layout,done,2027-03-18,\n12,layout,retake,2027-03-18,\n12,layout,done,2027-03-19,',
    0,
  ),
  'progress-order': progress(
    '12,key,done,2027-03-19,',
    '12,layout,done,2027-03-18,\n12,key,done,2027-03-19,',
    0,
  ),
  'progress-open': {
    files: { 'episode.yaml': '', '12.cut': CUT.replace('cut 1', 'cut 12'), '.~lock.progress.csv#': '' },
    failing: ['progress', '12', 'layout', 'done'],
    status: 1,
    mend: (host) => void host.files.delete('/work/.~lock.progress.csv#'),
    mended: ['progress', '12', 'layout', 'done'],
  },
  'would-overwrite': {
    files: { 'harbour/episode.yaml': 'fps: 24\n' },
    failing: ['new', 'episode', 'harbour'],
    status: 2,
    mended: ['new', 'episode', 'harbour-2'],
  },
  'table-faulty': {
    files: { 'grid.csv': 'frame,A\n1,1\n3,2\n' },
    failing: ['new', 'cut', '13', '--from-csv', 'grid.csv'],
    status: 1,
    mend: set('grid.csv', 'frame,A\n1,1\n2,\n3,2\n'),
    mended: ['new', 'cut', '13', '--from-csv', 'grid.csv'],
  },
  'draft-unlike': {
    files: { 'grid.csv': 'frame,A\n1,1.1=\n2,2\n' },
    failing: ['new', 'cut', '13', '--from-csv', 'grid.csv', '-o', '-'],
    status: 0,
    mend: set('grid.csv', 'frame,A\n1,1\n2,1.1=\n3,2\n'),
    mended: ['new', 'cut', '13', '--from-csv', 'grid.csv'],
  },
  'number-taken': {
    files: { 'episode.yaml': 'cuts: "*.cut"\n', 'c012.cut': CUT.replace(/^cut \S+/m, 'cut 12') },
    failing: ['new', 'cut', '012'],
    status: 2,
    mended: ['new', 'cut', '12A'],
  },
  'watch-impossible': {
    files: { 'c012.cut': CUT },
    prepare: (host) => void host.lockedFolders.add('/work'),
    failing: ['watch', 'c012.cut'],
    status: 2,
    mended: ['build', 'c012.cut'],
  },
  'number-two-counts': {
    files: { 'a.cut': 'cut 1\ntime 1+0\nA: 1--2 x 1---2..\n' },
    failing: ['number', 'a.cut'],
    status: 1,
    mend: set('a.cut', 'cut 1\ntime 1+0\nA: 1--2 x 1---2a..\n'),
    mended: ['number', 'a.cut'],
  },
  'file-missing': line(['build', 'c12.cut'], ['build', 'c012.cut']),
  'file-unreadable': {
    files: { 'c012.cut': CUT },
    prepare: (host) => void host.locked.add('/work/c012.cut'),
    failing: ['check', 'c012.cut'],
    status: 2,
    mend: (host) => void host.locked.clear(),
    mended: ['check', 'c012.cut'],
  },
  'file-too-large': bytes(new Uint8Array(50 * 1024 * 1024).fill(0x61)),
  'wrong-encoding': bytes(Buffer.from('cut 1\ntime 1+0\nmemo "caf\xe9"\nA: 1..\n', 'latin1')),
  'not-text': bytes(Buffer.from(`${CUT}\0\0`)),
  'not-marked': {
    files: { 'c012.cut': CUT },
    prepare: (host) => {
      const then = (text: string) => memoryHost({ 'c012.cut': text });
      host.revisions.set('HEAD~1', then(CUT.replace('2..', '2'))).set('HEAD~2', then(CUT));
    },
    failing: ['build', 'c012.cut', '--marked-against', 'HEAD~1'],
    status: 0,
    mended: ['build', 'c012.cut', '--marked-against', 'HEAD~2'],
  },
  'no-cuts': {
    files: { 'scenes/a.png': 'x', 'cuts/c1.cut': CUT },
    failing: ['build', 'scenes/'],
    status: 2,
    mended: ['build', 'cuts/'],
  },
  'pattern-empty': manifest('cuts: [ "cut/*.cut", cuts/c1.cut ]', 'cuts: [ "cuts/*.cut" ]', 0),
  'cut-twice': {
    files: { 'episode.yaml': '', 'c012.cut': CUT, 'c013.cut': CUT },
    failing: ['check', '.'],
    status: 0,
    mend: set('c013.cut', CUT.replace('cut 1', 'cut 2')),
    mended: ['check', '.'],
  },
  'episode-syntax': manifest('title: Harbour: Lights', 'title: "Harbour: Lights"'),
  'episode-key': manifest('papper: A4', 'paper: A4'),
  'episode-value': manifest('fps: fast', 'fps: 24'),
  'episode-outside': {
    ...manifest('cuts: [ "../other/*.cut" ]', 'cuts: [ "cuts/*.cut" ]'),
    prepare: (host) => void host.files.set('/other/c1.cut', Buffer.from(CUT)),
  },
  'artist-without-cut': manifest('artists: { M. Arai: [112] }', 'artists: { M. Arai: [1] }', 0),
  'reuse-unknown': reuse('level C reuse 80/C\nC: 1--2..', 'level C reuse 8/C\nC: 1--2..', 0),
  'reuse-count': reuse('level C reuse 8/C\nC: 1---2..', 'level C reuse 8/C\nC: 1--2..', 0),
  'reuse-number': reuse(
    'level C reuse 8/C\ncels C 1 2\nC: 1--2..',
    'level C reuse 8/C\ncels C 1 1.1 1.2 2\nC: 1--2..',
    1,
  ),
  'reuse-circle': {
    ...reuse('level C reuse 8/C\nC: 1--2..', 'C: 1--2..', 1),
    files: {
      'episode.yaml': '',
      '8.cut': 'cut 8\ntime 1+0\nlevel C reuse 9/C\nC: 1--2..\n',
      '9.cut': 'cut 9\ntime 1+0\nlevel C reuse 8/C\nC: 1--2..\n',
    },
  },
  'reuse-nothing': reuse('level C reuse 8/C\nC: 5--6..', 'level C reuse 8/C\nC: 1--2..', 0),
  'reuse-twice': {
    files: {
      'episode.yaml': '',
      '8.cut': 'cut 8\ntime 1+0\nC: 1--2..\n',
      '9.cut': 'cut 9\ntime 1+0\nlevel C reuse 8/C\nC: 2 3..\n',
      '10.cut': 'cut 10\ntime 1+0\nlevel C reuse 8/C\nC: 2 4..\n',
    },
    failing: ['check', '10.cut'],
    status: 0,
    mend: set('10.cut', 'cut 10\ntime 1+0\nlevel C reuse 9/C\nC: 2 4..\n'),
    mended: ['check', '10.cut'],
  },
  'overlap-differs': join('overlap out 24', 'overlap in 12', 'overlap in 1+0', 1),
  'overlap-fps': join('overlap out 24', 'fps 12\noverlap in 24', 'overlap in 24', 1),
  'overlap-unanswered': join('overlap out 24', '', 'overlap in 24', 0),
  'overlap-missing': join('overlap out 24', '', 'overlap in 24', 0, '13.cut'),
  'overlap-alone': join('', 'overlap out 24', 'fade out 1+1..2+0', 0, '13.cut'),
  'overlap-unchecked': join('overlap out 24', 'overlap in', 'overlap in 24', 0),
  'text-too-long': bytes(Buffer.from(`${CUT}memo "${'x '.repeat(3000)}"\n`)),
  'levels-too-many': bytes(Buffer.from(CUT + Array.from({ length: 300 }, (_, i) => `B${i}: 1..\n`).join(''))),
  'cut-too-large': bytes(Buffer.from(`${CUT}memo "${'x'.repeat(150_000)}"\n`)),
  'reading-stopped': bytes(Buffer.from(CUT + 'zzz\n'.repeat(2000))),
  'edit-speeds': edit('otio', ['time 24', 'time 24\nfps 12'], ['time 24', 'time 24']),
  'edit-overlap': edit(
    'edl',
    ['time 24\noverlap out 12', 'time 24\noverlap in 8'],
    ['time 24\noverlap out 12', 'time 24\noverlap in 12'],
  ),
  'edit-list-long': {
    ...edit(
      'edl',
      ['time 30+0\noverlap out 300', 'time 30+0\noverlap in 300'],
      ['time 30+0\noverlap out 255', 'time 30+0\noverlap in 255'],
    ),
    status: 0,
  },
  'pixels-shape': {
    files: { 'episode.yaml': 'output: 1440x1080\n', 'cuts/c1.cut': CUT },
    failing: ['export', 'cuts/c1.cut', '--pixels'],
    status: 0,
    mend: set('episode.yaml', 'output: 1920x1080\n'),
    mended: ['export', 'cuts/c1.cut', '--pixels'],
  },
  'edit-list-limit': edit('edl', ['time 24\nfps 12', 'time 24\nfps 12'], ['time 24', 'time 24']),
  'canvas-missing': {
    files: { 'c012.cut': CUT },
    prepare: withoutCanvas(true),
    failing: SHOT,
    status: 2,
    mend: withoutCanvas(false),
    mended: SHOT,
  },
  'film-program-missing': {
    files: { 'c012.cut': CUT },
    failing: FILMED,
    status: 0,
    mend: (host) => void installFilmProgram(host),
    mended: FILMED,
  },
  'film-failed': {
    files: { 'c012.cut': CUT },
    prepare: (host) => void installFilmProgram(host, { after: 3, said: 'x.tmp: No space left on device\n' }),
    failing: FILMED,
    status: 2,
    mend: (host) => void installFilmProgram(host),
    mended: FILMED,
  },
  'scan-unreadable': {
    files: { 'c012.cut': `${CUT}level A picture "a{number}.png"\n`, 'a1.png': 'no picture at all' },
    failing: SHOT,
    status: 0,
    mend: (host) => void host.files.delete('/work/a1.png'),
    mended: SHOT,
  },
  'track-missing': recorded({}, `track "sound/c12.wav"\n${LINE}`, TRACK),
  'track-outside': recorded({}, `track "/home/nao/c012.wav"\n${LINE}`, TRACK),
  'track-unreadable': recorded({ 'sound/c012.wav': Buffer.from(`ID3${'x'.repeat(500)}`) }, TRACK, TRACK, {
    'sound/c012.wav': SPOKEN,
  }),
  'track-damaged': recorded({ 'sound/c012.wav': SPOKEN.subarray(0, 14_000) }, TRACK, TRACK, {
    'sound/c012.wav': SPOKEN,
  }),
  'track-start': recorded({}, `track "sound/c012.wav" from 60s\n${LINE}`, TRACK),
  'track-length': recorded({ 'sound/c012.wav': wave(tone(1, 0.25, 1, 4000), { rate: 4000 }) }, TRACK, TRACK, {
    'sound/c012.wav': SPOKEN,
  }),
  'track-silent': recorded({ 'sound/c012.wav': wave(tone(2, 0, 0, 4000), { rate: 4000 }) }, TRACK, TRACK, {
    'sound/c012.wav': SPOKEN,
  }),
  'voice-unheard': recorded({}, 'track "sound/c012.wav"\nvoice "Nao" 7..48 "Wait for me!"\n', TRACK),
  'sound-unwritten': recorded({}, 'track "sound/c012.wav"', TRACK),
  'nothing-to-hear': {
    ...recorded({}, LINE, TRACK),
    failing: ['listen', 'c012.cut'],
    status: 1,
    mended: ['check', 'c012.cut'],
  },
  'line-missing': {
    ...recorded({}, TRACK, TRACK),
    failing: ['listen', 'c012.cut'],
    mended: ['check', 'c012.cut'],
  },
  'line-doubtful': {
    files: {
      'a.wav': wave(synthesise(3.5, [{ at: 0.5, text: 'あかい いとに さわるな' }]).samples),
      'c012.cut': SPOKEN_CUT('あかい ねて'),
    },
    failing: ['listen', 'c012.cut'],
    status: 0,
    mend: set('c012.cut', SPOKEN_CUT('あかい いとに さわるな')),
    mended: ['listen', 'c012.cut'],
  },
  'line-unread': {
    ...recorded({}, 'track "sound/c012.wav"\nvoice "Nao" 7..36 "海へ"', TRACK),
    failing: ['listen', 'c012.cut'],
    mended: ['check', 'c012.cut'],
  },
  'same-output': {
    files: { 'day/c001.cut': CUT, 'night/c001.cut': CUT },
    failing: ['build', 'day/c001.cut', 'night/c001.cut', '--output', 'out/'],
    status: 2,
    mended: ['build', 'day/c001.cut', '--output', 'out/day/'],
  },
  'output-is-input': line(
    ['build', 'c012.cut', '--output', 'c012.cut'],
    ['build', 'c012.cut', '--output', 'c012.pdf'],
  ),
  'output-unwritable': {
    files: { 'c012.cut': CUT },
    prepare: (host) => void host.locked.add('/work/read-only'),
    failing: ['build', 'c012.cut', '--output', 'read-only/c012.pdf'],
    status: 2,
    mended: ['build', 'c012.cut', '--output', 'out/c012.pdf'],
  },
  'list-cut-errors': {
    files: { 'episode.yaml': '', 'c001.cut': CUT, 'c002.cut': 'cut 2\ntime 1+0\nA: 1--\n' },
    failing: ['list'],
    status: 1,
    mend: set('c002.cut', CUT.replace('cut 1', 'cut 2')),
    mended: ['list'],
  },
  'list-over-budget': {
    files: { 'episode.yaml': 'budget: 0+12\n', 'c001.cut': CUT },
    failing: ['list', '--check'],
    status: 1,
    mend: set('episode.yaml', 'budget: 1+0\n'),
    mended: ['list', '--check'],
  },
  'unknown-command': line(['biuld', 'c012.cut'], ['build', 'c012.cut']),
  'unknown-option': line(['build', 'c012.cut', '--papper', 'A4'], ['build', 'c012.cut', '--paper', 'A4']),
  'option-value': line(['build', 'c012.cut', '--paper', 'A9'], ['build', 'c012.cut', '--paper', 'A4']),
  'wrong-arguments': line(['build'], ['build', 'c012.cut']),
  'internal-fault': {
    files: { 'c012.cut': CUT },
    prepare: (host) => {
      const { read } = host;
      host.read = (path) => {
        if (path.endsWith('.cut')) throw new Error('a fault that was made');
        return read(path);
      };
    },
    failing: ['check', 'c012.cut'],
    status: 2,
    mend: (host) => {
      host.read = () => ({ ok: true, value: Buffer.from(CUT) });
    },
    mended: ['check', 'c012.cut'],
  },
};
