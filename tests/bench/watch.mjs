/** A watch on the built program: from the end of a save to the end of the PDF that it made, as whoever looks at the folder sees it. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeEpisode } from './generated.mjs';
import { median, milliseconds, report } from './measure.mjs';

const ROUNDS = 25;

/** Milliseconds, one a save. `program`: how the watch is begun. */
export async function saves(program, text, rounds = ROUNDS) {
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  writeFileSync(join(folder, 'c012.cut'), text(0));
  const { took } = await watched(program, { folder, what: 'c012.cut', cut: 'c012.cut', text }, rounds);
  return took;
}

/** The same for a folder that is there already, and is removed then; and MB that the watch takes at the end. `cut`: the one that is saved. */
export async function watched(program, { folder, what, cut: name, text }, rounds = ROUNDS) {
  const [cut, pdf] = [join(folder, name), join(folder, name.replace(/cut$/, 'pdf'))];
  const child = spawn(process.execPath, [...program, 'watch', what], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  const begun = new Promise((resolve, reject) => {
    child.stderr.on('data', (chunk) => {
      said += chunk;
      if (said.includes('Ctrl-C ends it')) resolve();
    });
    child.once('exit', () => reject(new Error(`the watch has ended: ${said}`)));
  });
  try {
    await begun;
    const took = [];
    for (let round = 1; round <= rounds; round++) {
      const before = statSync(pdf).ino;
      writeFileSync(cut, text(round));
      const start = performance.now();
      while (statSync(pdf).ino === before) await new Promise((resolve) => setTimeout(resolve, 1));
      took.push(performance.now() - start);
      if (readFileSync(pdf).length < 1000) throw new Error('half a PDF');
      await new Promise((resolve) => setTimeout(resolve, 60));
    }
    const kilobytes = Number(
      spawnSync('ps', ['-o', 'rss=', '-p', `${child.pid}`], { encoding: 'utf8' }).stdout,
    );
    return { took: median(took), megabytes: kilobytes / 1024 };
  } finally {
    child.removeAllListeners('exit');
    child.kill('SIGTERM');
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A new memo on each save, so that the paper differs. */
const retimed = (round) => {
  const example = readFileSync(new URL('../../examples/saltmarsh/cuts/c012.cut', import.meta.url), 'utf8');
  return `${example}memo "take ${round}"\n`;
};

export async function measureWatch() {
  const bare = [];
  for (let i = 0; i < 9; i++) {
    const start = performance.now();
    spawnSync(process.execPath, ['-e', '0']);
    bare.push(performance.now() - start);
  }
  const program = [fileURLToPath(new URL('../../bin/cutwright.js', import.meta.url))];
  const took = await saves(program, retimed);
  report(
    'save to PDF in watch, one cut',
    `${milliseconds(took)}, ${(took / median(bare)).toFixed(2)} × bare node`,
    '100 ms',
  );
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  const { cuts } = writeEpisode(folder, { cuts: 300 });
  const { file, text } = cuts[150];
  const one = { folder, what: '.', cut: file, text: (round) => `${text}note 1 "take ${round}"\n` };
  const whole = await watched(program, one, 12);
  report(
    'save to PDF in watch, one of 300 cuts',
    `${milliseconds(whole.took)}, ${(whole.took / took).toFixed(2)} × one cut alone, ${whole.megabytes.toFixed(0)} MB`,
    '80 ms, 200 MB',
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await measureWatch();
