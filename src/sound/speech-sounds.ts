/**
 * The sounds of speech that texts are read into: English by the 39 of the CMU dictionary (ARPAbet), Japanese by its own. Each has a
 * class, a usual length, and what it looks like in a recording.
 *
 * Formants of English vowels: Peterson and Barney, J. Acoust. Soc. Am. 24:175 (1952), means of men (from memory, rounded); those of
 * Japanese vowels and lengths of all sounds: common practice. They are only where an alignment begins: it learns the speaker's own.
 */

export type SoundClass =
  | 'vowel'
  | 'glide'
  | 'liquid'
  | 'nasal'
  | 'fricative'
  | 'voiced-fricative'
  | 'stop'
  | 'voiced-stop'
  | 'affricate'
  | 'voiced-affricate';

/** A steady part of a sound: a spectrum, how loud it is between silence (0) and the loudest vowels (1), how voiced (0 to 1). */
export interface SoundPart {
  /** Parts of one name look alike. */
  readonly name: string;
  readonly formants: readonly [number, number, number] | null;
  /** Noise about this frequency, Hz, this wide. */
  readonly noise: readonly [centre: number, width: number] | null;
  readonly loud: number;
  readonly voiced: number;
  /** Share of the sound's length. */
  readonly share: number;
}

export interface SpeechSound {
  readonly name: string;
  readonly kind: SoundClass;
  /** Usual length in running speech. */
  readonly seconds: number;
  readonly parts: readonly SoundPart[];
}

type Formants = readonly [number, number, number];

function vowel(name: string, seconds: number, ...formants: readonly Formants[]): SpeechSound {
  const parts = formants.map(
    (one, i): SoundPart => ({
      name: formants.length > 1 ? `${name}${i + 1}` : name,
      formants: one,
      noise: null,
      loud: 0.92,
      voiced: 1,
      share: 1 / formants.length,
    }),
  );
  return { name, kind: 'vowel', seconds, parts };
}

function voiced(
  name: string,
  kind: SoundClass,
  seconds: number,
  formants: Formants,
  loud: number,
  noise: SoundPart['noise'] = null,
): SpeechSound {
  const part: SoundPart = { name, formants, noise, loud, voiced: noise ? 0.7 : 0.95, share: 1 };
  return { name, kind, seconds, parts: [part] };
}

function fricative(name: string, seconds: number, centre: number, width: number, loud: number): SpeechSound {
  const part: SoundPart = { name, formants: null, noise: [centre, width], loud, voiced: 0.1, share: 1 };
  return { name, kind: 'fricative', seconds, parts: [part] };
}

const closure = (isVoiced: boolean, share: number): SoundPart =>
  isVoiced
    ? { name: 'voiced-closure', formants: [220, 1000, 2200], noise: null, loud: 0.4, voiced: 0.8, share }
    : { name: 'closure', formants: null, noise: null, loud: 0.08, voiced: 0.1, share };

function stop(
  name: string,
  isVoiced: boolean,
  seconds: number,
  burst: readonly [number, number],
  loud: number,
  hiss = false,
): SpeechSound {
  const kind = hiss ? (isVoiced ? 'voiced-affricate' : 'affricate') : isVoiced ? 'voiced-stop' : 'stop';
  const share = hiss ? 0.45 : 0.62;
  const release: SoundPart = {
    name: `${name}-release`,
    formants: null,
    noise: burst,
    loud,
    voiced: isVoiced ? 0.5 : 0.15,
    share: 1 - share,
  };
  return { name, kind, seconds, parts: [closure(isVoiced, share), release] };
}

const table = (...sounds: readonly SpeechSound[]): ReadonlyMap<string, SpeechSound> =>
  new Map(sounds.map((sound) => [sound.name, sound]));

export const ENGLISH_SOUNDS = table(
  vowel('AA', 0.12, [730, 1090, 2440]),
  vowel('AE', 0.12, [660, 1720, 2410]),
  vowel('AH', 0.07, [620, 1200, 2400]),
  vowel('AO', 0.12, [570, 840, 2410]),
  vowel('AW', 0.16, [730, 1200, 2440], [440, 950, 2300]),
  vowel('AY', 0.15, [720, 1150, 2450], [420, 1950, 2550]),
  vowel('EH', 0.09, [530, 1840, 2480]),
  vowel('ER', 0.1, [490, 1350, 1690]),
  vowel('EY', 0.13, [500, 1850, 2480], [340, 2150, 2700]),
  vowel('IH', 0.07, [390, 1990, 2550]),
  vowel('IY', 0.1, [270, 2290, 3010]),
  vowel('OW', 0.13, [520, 950, 2400], [380, 850, 2300]),
  vowel('OY', 0.16, [560, 850, 2400], [390, 1900, 2500]),
  vowel('UH', 0.07, [440, 1020, 2240]),
  vowel('UW', 0.1, [300, 900, 2240]),
  voiced('W', 'glide', 0.06, [300, 700, 2200], 0.75),
  voiced('Y', 'glide', 0.05, [280, 2200, 2900], 0.75),
  voiced('L', 'liquid', 0.06, [360, 1050, 2700], 0.75),
  voiced('R', 'liquid', 0.06, [350, 1150, 1550], 0.75),
  voiced('M', 'nasal', 0.07, [260, 1000, 2200], 0.66),
  voiced('N', 'nasal', 0.06, [260, 1500, 2400], 0.66),
  voiced('NG', 'nasal', 0.07, [260, 2000, 2600], 0.66),
  fricative('S', 0.1, 6200, 2200, 0.55),
  fricative('SH', 0.1, 3600, 1800, 0.6),
  fricative('F', 0.09, 5500, 5000, 0.32),
  fricative('TH', 0.08, 5800, 5000, 0.28),
  fricative('HH', 0.05, 1600, 2600, 0.4),
  voiced('V', 'voiced-fricative', 0.06, [260, 1200, 2300], 0.55, [4500, 5000]),
  voiced('DH', 'voiced-fricative', 0.045, [270, 1400, 2500], 0.55, [5000, 5000]),
  voiced('Z', 'voiced-fricative', 0.08, [260, 1500, 2500], 0.55, [6200, 2200]),
  voiced('ZH', 'voiced-fricative', 0.08, [260, 1700, 2500], 0.55, [3600, 1800]),
  stop('P', false, 0.09, [900, 1800], 0.35),
  stop('T', false, 0.08, [4500, 3000], 0.42),
  stop('K', false, 0.09, [2000, 1500], 0.42),
  stop('B', true, 0.07, [700, 1500], 0.5),
  stop('D', true, 0.06, [3500, 3000], 0.5),
  stop('G', true, 0.07, [1900, 1500], 0.5),
  stop('CH', false, 0.13, [3600, 2000], 0.55, true),
  stop('JH', true, 0.11, [3600, 2000], 0.55, true),
);

export const JAPANESE_SOUNDS = table(
  vowel('a', 0.09, [760, 1250, 2500]),
  vowel('i', 0.08, [300, 2250, 3000]),
  vowel('u', 0.075, [340, 1250, 2250]),
  vowel('e', 0.09, [480, 1950, 2600]),
  vowel('o', 0.09, [480, 850, 2450]),
  voiced('w', 'glide', 0.05, [320, 800, 2200], 0.75),
  voiced('y', 'glide', 0.05, [280, 2200, 2900], 0.75),
  voiced('r', 'liquid', 0.035, [380, 1400, 2400], 0.65),
  voiced('m', 'nasal', 0.065, [260, 1000, 2200], 0.66),
  voiced('n', 'nasal', 0.055, [260, 1500, 2400], 0.66),
  /** ん. */
  voiced('N', 'nasal', 0.1, [260, 1300, 2300], 0.66),
  fricative('s', 0.095, 6000, 2400, 0.55),
  fricative('sh', 0.1, 3700, 1900, 0.6),
  fricative('h', 0.06, 1700, 2600, 0.4),
  fricative('f', 0.075, 1500, 4000, 0.35),
  stop('z', true, 0.085, [6000, 2400], 0.55, true),
  stop('j', true, 0.085, [3700, 1900], 0.55, true),
  stop('ts', false, 0.1, [6000, 2400], 0.52, true),
  stop('ch', false, 0.1, [3700, 1900], 0.55, true),
  stop('p', false, 0.075, [900, 1800], 0.35),
  stop('t', false, 0.07, [4000, 3000], 0.4),
  stop('k', false, 0.075, [2000, 1500], 0.4),
  stop('b', true, 0.06, [700, 1500], 0.5),
  stop('d', true, 0.05, [3500, 3000], 0.5),
  stop('g', true, 0.055, [1900, 1500], 0.5),
  /** っ: the closure of what follows. */
  { name: 'q', kind: 'stop', seconds: 0.1, parts: [closure(false, 1)] },
);
