/**
 * `npm run bench -- --only sound`: how far off `listen` is, held against the times that an independent synthesiser tells of its own words (eSpeak NG,
 * asked as a separate program: it is under the GPL and no part of this one). Skipped with a word where there is none.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { ENGLISH, isHeldOut, JAPANESE } from './spoken-lines.mjs';

const VOICES = {
  en: [
    { voice: 'en-us', speed: 140, pitch: 45 },
    { voice: 'en-gb-x-rp', speed: 165, pitch: 55 },
    { voice: 'en-us+f3', speed: 150, pitch: 60 },
    { voice: 'en-gb-scotland+m3', speed: 185, pitch: 40 },
  ],
  ja: [
    { voice: 'ja', speed: 130, pitch: 50 },
    { voice: 'ja+f2', speed: 150, pitch: 60 },
    { voice: 'ja+m3', speed: 170, pitch: 40 },
    { voice: 'ja+f4', speed: 140, pitch: 55 },
  ],
};
const FPS = 24;

/** The particles は and へ as people say them: the synthesiser reads them letter by letter. No place in the text moves. */
const asSaid = (text) =>
  text.replace(/(?<=[^ ])は(?=[ 、。])/g, 'わ').replace(/(?<=[^ ])へ(?=[ 、。])/g, 'え');

/** Every line with every voice; null where there is no synthesiser. */
export function spokenLines(folder) {
  const jobs = [];
  for (const [language, lines] of Object.entries({ en: ENGLISH, ja: JAPANESE }))
    lines.forEach((text, index) => {
      VOICES[language].forEach((voice, v) => {
        jobs.push({
          id: `${language}-${index}-${v}`,
          language,
          index,
          line: text,
          text: asSaid(text),
          ...voice,
        });
      });
    });
  const program = fileURLToPath(new URL('espeak-words.py', import.meta.url));
  const input = jobs.map((job) => JSON.stringify(job)).join('\n');
  const { status, stdout } = spawnSync('python3', [program, folder], {
    input,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  if (status !== 0) return null;
  const told = new Map(
    stdout
      .trim()
      .split('\n')
      .map((line) => [JSON.parse(line).id, JSON.parse(line)]),
  );
  return jobs.map((job) => ({ ...job, ...told.get(job.id), file: join(folder, `${job.id}.wav`) }));
}

/** A generator of numbers from 0 to 1, so that every run has the same noise. */
export function randomOf(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Samples of a WAV of 16 bits, with silence before and behind, and noise so many dB below the speech (null: none). */
export function recording(file, { before, after, noiseDb, seed }) {
  const bytes = readFileSync(file);
  const rate = bytes.readUInt32LE(24);
  const count = Math.floor((bytes.length - 44) / 2);
  const lead = Math.round(before * rate);
  const out = new Float32Array(lead + count + Math.round(after * rate));
  let energy = 0;
  for (let i = 0; i < count; i++) {
    out[lead + i] = bytes.readInt16LE(44 + 2 * i) / 32768;
    energy += out[lead + i] ** 2;
  }
  if (noiseDb !== null) {
    const random = randomOf(seed);
    const level = Math.sqrt(energy / count) * 10 ** (-noiseDb / 20);
    for (let i = 0; i < out.length; i++) {
      const gauss = Math.sqrt(-2 * Math.log(random() + 1e-12)) * Math.cos(2 * Math.PI * random());
      out[i] += level * gauss;
    }
  }
  return { samples: out, rate };
}

export function waveFile({ samples, rate }) {
  const out = Buffer.alloc(44 + samples.length * 2);
  out.write('RIFF', 0, 'latin1');
  out.writeUInt32LE(36 + samples.length * 2, 4);
  out.write('WAVEfmt ', 8, 'latin1');
  out.writeUInt32LE(16, 16);
  out.writeUInt16LE(1, 20);
  out.writeUInt16LE(1, 22);
  out.writeUInt32LE(rate, 24);
  out.writeUInt32LE(rate * 2, 28);
  out.writeUInt16LE(2, 32);
  out.writeUInt16LE(16, 34);
  out.write('data', 36, 'latin1');
  out.writeUInt32LE(samples.length * 2, 40);
  for (let i = 0; i < samples.length; i++)
    out.writeInt16LE(Math.max(-32768, Math.min(32767, Math.round(samples[i] * 32767))), 44 + i * 2);
  return out;
}

/** The stage as a module, out of its sources. */
export async function soundStage() {
  // There it finds the packages.
  const outfile = fileURLToPath(new URL('../../node_modules/.sound-stage.mjs', import.meta.url));
  await build({
    stdin: {
      contents:
        "export * from './src/sound/find-lines.ts'; export * from './src/sound/forced-alignment.ts'; export * from './src/sound/pronunciation.ts'; export * from './src/sound/sound-templates.ts'; export { englishDictionary } from './src/sound/english-dictionary.ts'; export { shippedEnglishWords } from './src/host/shipped-files.ts';",
      resolveDir: fileURLToPath(new URL('../..', import.meta.url)),
    },
    bundle: true,
    platform: 'node',
    format: 'esm',
    outfile,
    banner: { js: "import { createRequire as cr } from 'node:module'; const require = cr(import.meta.url);" },
    logLevel: 'error',
  });
  return import(pathToFileURL(outfile).href);
}

/** Errors of word starts, in frames at 24 a second, of lines that were found; and how many were not. */
export function judge(stage, dictionary, spoken, options) {
  const random = randomOf(options.seed ?? 1);
  const errors = [];
  let missed = 0;
  for (const one of spoken) {
    const before = 0.3 + 0.7 * random();
    const made = recording(one.file, {
      before,
      after: 0.3 + 0.6 * random(),
      noiseDb: options.noiseDb,
      seed: one.index,
    });
    const bytes = waveFile(made);
    const source = { size: bytes.length, read: (at, count) => bytes.subarray(at, at + count) };
    const seconds = made.samples.length / made.rate;
    const [found] = stage.findLines(
      source,
      { firstSample: 0, seconds },
      [{ text: options.other?.(one) ?? one.line, from: null, to: null, ties: [] }],
      dictionary,
      options.settings,
    );
    if (!found.words) {
      missed += 1;
      continue;
    }
    for (const { at, ms } of one.words) {
      const word = found.words.find(({ start }) => start === at);
      if (word) errors.push({ id: one.id, at, frames: (word.seconds - before - ms / 1000) * FPS });
    }
  }
  return { errors, missed, lines: spoken.length };
}

export function shares(errors) {
  const sizes = errors.map(({ frames }) => Math.abs(frames)).sort((a, b) => a - b);
  const at = (share) => sizes[Math.min(sizes.length - 1, Math.floor(sizes.length * share))] ?? Number.NaN;
  const within = (frames) => sizes.filter((one) => one <= frames).length / Math.max(1, sizes.length);
  return { words: sizes.length, median: at(0.5), p95: at(0.95), within1: within(1), within3: within(3) };
}

export async function measureSound(report) {
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-sound-'));
  try {
    mkdirSync(folder, { recursive: true });
    const spoken = spokenLines(folder);
    if (!spoken) {
      report('listen', 'skipped: eSpeak NG is not installed (libespeak-ng, python3)', '');
      return;
    }
    const stage = await soundStage();
    const dictionary = stage.englishDictionary(stage.shippedEnglishWords().value);
    for (const held of [false, true])
      for (const language of ['en', 'ja'])
        for (const noiseDb of [null, 20]) {
          const some = spoken.filter((one) => one.language === language && isHeldOut(one.index) === held);
          const { errors, missed, lines } = judge(stage, dictionary, some, { noiseDb });
          const { words, median, p95, within1, within3 } = shares(errors);
          const name = `${held ? 'held out' : 'tuned on'}, ${language}, ${noiseDb === null ? 'clean' : '20 dB'}`;
          const percent = (share) => `${(100 * share).toFixed(1)} %`;
          report(
            `listen: ${name}`,
            `${lines} lines, ${words} words: median ${median.toFixed(2)} frames, 95 % within ${p95.toFixed(2)}; ${percent(within1)} within 1, ${percent(within3)} within 3; ${missed} said to be missing`,
            'median <= 1, 95 % within 3',
          );
        }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const writeWave = (path, made) => writeFileSync(path, waveFile(made));
