import { figure, plural } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { SoundFormatName, WaveTrouble } from '../message-terms.js';
import type { TrackMessages } from '../track-codes.js';

const FORMATS: Readonly<Record<SoundFormatName, string>> = {
  mp3: 'an MP3',
  flac: 'a FLAC',
  ogg: 'an Ogg',
  aiff: 'an AIFF',
  m4a: 'an M4A',
  caf: 'a CAF',
  au: 'an AU',
  wave64: 'a Wave64',
  'big-endian-wave': 'a WAV with its bytes the other way round (RIFX)',
  avi: 'a film (AVI)',
  midi: 'a MIDI',
};

export const track: Texts<TrackMessages> = {
  'track-missing': {
    title: 'the recording is not there',
    explanation:
      'The file that the track statement names cannot be read. Its path is taken from the folder of the cut. The sheet is printed without the waveform.',
    message: {
      missing: ({ file, guess }) =>
        `There is no file \`${file}\`${guess === null ? '.' : `; did you mean \`${guess}\`?`}`,
      unreadable: ({ file, reason }) => `\`${file}\` cannot be read: ${reason}.`,
    },
  },
  'track-outside': {
    title: 'the recording lies outside the episode',
    explanation:
      'A cut may read recordings of its own folder and below, and below the folder of its episode (where episode.yaml stands), and no others. So an episode can be copied whole, and a cut that came by mail reads nothing that is not its own.',
    message: ({ path, inEpisode }) =>
      `\`${path}\` is not below this folder${inEpisode ? ' and not below the folder of the episode' : ''}, so it is not read.`,
  },
  'track-unreadable': {
    title: 'the recording cannot be read',
    explanation:
      'A track is a WAV file: plain samples of 8, 16, 24 or 32 bits, or floating-point ones of 32 or 64 bits, of any rate, mono or stereo; long ones as RF64. Save other recordings as WAV first. The sheet is printed without the waveform.',
    message: (given) => `\`${given.file}\` ${trouble(given)}.`,
  },
  'track-damaged': {
    title: 'the recording is not whole',
    explanation:
      'The file ends before its own header says, or holds samples that are no numbers. What can be read is used, and the rest counts as silence. Copy the recording again, or save it anew.',
    message: {
      'cut-off': ({ file, seconds, promisedSeconds }) =>
        `\`${file}\` is cut off: ${inSeconds(seconds)} of ${inSeconds(promisedSeconds)} are there.`,
      'not-numbers': ({ file, count }) =>
        `\`${file}\` holds ${plural(count, 'sample')} on these rows that ${count === 1 ? 'is no number' : 'are no numbers'}; silence stands for ${count === 1 ? 'it' : 'them'}.`,
    },
  },
  'track-past-end': {
    title: 'a recording that begins after the cut',
    explanation:
      'The row behind @ is the first on which the recording is heard, and it lies past the last row of the sheet.',
    message: ({ frame, rows }) =>
      `The recording begins on row ${frame}, but the sheet has ${plural(rows, 'row')}.`,
  },
  'timecode-range': {
    title: 'a timecode that is none',
    explanation:
      'A timecode is hours, minutes, seconds and frames. Minutes and seconds go up to 59, frames up to one less than the cut has in a second.',
    message: ({ fps }) =>
      `There is no such timecode: minutes and seconds go up to 59, frames up to ${fps - 1} at ${fps} frames a second.`,
  },
  'track-start': {
    title: 'the recording ends before the place where it should begin',
    explanation:
      'What stands behind from is a time in the recording, counted from its beginning, and the recording is shorter than that. If the reel has a timecode of its own, take off the one on which it starts.',
    message: ({ seconds, startSeconds }) =>
      `The recording lasts for ${inSeconds(seconds)}, so nothing is heard from ${inSeconds(startSeconds)} on.`,
  },
  'track-length': {
    title: 'recording and cut are not of one length',
    explanation:
      'The recording ends before the last row of the sheet, or goes on after it. Perhaps the cut was retimed, or it is the recording of another one. Behind from a recording may be longer: it is a reel.',
    message: {
      short: ({ rows, last }) =>
        last > 0
          ? `The recording ends on row ${last}, ${plural(rows, 'row')} before the sheet.`
          : 'The recording ends on the first row of the sheet.',
      long: ({ rows }) =>
        `The recording goes on for ${plural(rows, 'frame')} after the last row of the sheet.`,
    },
  },
  'track-silent': {
    title: 'nothing is heard',
    explanation:
      'On all rows of the sheet the recording stays below −50 dB of full scale. The microphone was off, it is the wrong file, or it begins at the wrong place.',
    message: () => 'The recording is silent on all rows of the sheet.',
  },
  'voice-unheard': {
    title: 'a line where the recording is silent',
    explanation:
      'A voice statement says that somebody speaks, and the recording is silent there for half a second or more. Either the rows are not those on which the line is heard (cutwright listen finds them), or the line is spoken with a pause: then write it as two.',
    message: ({ from, to, whole }) =>
      whole
        ? 'Nothing is heard on the rows of this line.'
        : `The recording is silent on rows ${from} to ${to} of this line.`,
  },
  'sound-unwritten': {
    title: 'something is heard where nothing is written',
    explanation:
      'The recording is not silent there for half a second or more, and neither a voice nor a sound nor music is written beside these rows. A line may be missing; cutwright listen --lines proposes ranges.',
    message: ({ stretches }) => {
      const all = stretches.slice(0, 3).map(({ from, to }) => `${from} to ${to}`);
      const more = stretches.length - all.length;
      const rows = `${all.join(', ')}${more > 0 ? ` and in ${plural(more, 'more place')}` : ''}`;
      return `Something is heard on rows ${rows}, and nothing is written there.`;
    },
  },
  'nothing-to-hear': {
    title: 'there is nothing to listen to',
    explanation:
      'The command listen reads the recording that the cut’s track statement names, and finds the lines of its voice statements in it. The statement is missing, its file could not be read, or no line is written; --lines needs none.',
    message: {
      'no-track': () => 'The cut names no recording; write it as `track "sound/c012.wav"`.',
      'no-recording': () => 'The recording cannot be read, so nothing can be heard.',
      'no-voices': () => 'The cut has no voice statement; `--lines` finds where somebody speaks.',
    },
  },
  'line-missing': {
    title: 'a line is not in the recording',
    explanation:
      'Nowhere in the recording is there anything that sounds like this line in its turn, so nothing is written of it. It was cut, it is spoken in other words, or the lines are written in another order than they are spoken in.',
    message: ({ speaker }) =>
      `This line${speaker === '' ? '' : ` of ${speaker}`} is not to be heard in the recording.`,
  },
  'line-doubtful': {
    title: 'a line may be somewhere else',
    explanation:
      'The line was found, but what is heard there is not much more like it than like other words. Listen to it; tie a word to its row by hand and it will be kept.',
    message: ({ from, to, speaker }) =>
      `It is not sure that this line${speaker === '' ? '' : ` of ${speaker}`} is spoken on rows ${from} to ${to}.`,
  },
  'line-unread': {
    title: 'words whose sounds are not known',
    explanation:
      'Kana are read as they are written, kanji by their ruby in 《 》 behind them, as in 行《い》く. Without it, nobody can tell how they are spoken here. Figures in Japanese are written in kana or with ruby, too. Ruby is not printed.',
    message: ({ found }) =>
      `It is not known how \`${found}\` is read; write its ruby behind it: \`${found}《かな》\`.`,
  },
};

function trouble(given: WaveTrouble): string {
  switch (given.fault) {
    case 'empty':
      return 'is empty';
    case 'other-format':
      return `is ${FORMATS[given.format]} file, not a WAV`;
    case 'unknown-format':
      return 'is no WAV file';
    case 'cut-off':
      return 'is cut off before its first sample';
    case 'no-samples':
      return 'holds no samples';
    case 'no-rate':
      return 'says a rate of 0 samples a second';
    case 'no-channels':
      return 'says that it has no channels';
    case 'coded':
      return `holds samples of ${given.bits} bits in a coding (format ${given.tag}) that is not read; save it with plain samples`;
    case 'damaged':
      return 'has a header that contradicts itself';
  }
}

function inSeconds(seconds: number): string {
  return `${figure(seconds)} s`;
}
