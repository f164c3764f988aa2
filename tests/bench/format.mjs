/** Formatting: a text of 3,000 lines that has the usual layout already, and the same text typed carelessly. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeEpisode } from './generated.mjs';
import { median, milliseconds, report, timed } from './measure.mjs';

const LINES = 3000;
const ROUNDS = 9;

/** Statements of many cuts in one text: what they mean together does not matter to their layout. */
function longText(folder) {
  writeEpisode(folder, { cuts: 300, seed: 7 });
  const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.cut'))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8'));
  const lines = texts.join('').split('\n');
  if (lines.length < LINES) throw new Error(`only ${lines.length} lines`);
  return `${lines.slice(0, LINES).join('\n')}\n`;
}

export async function measureFormat({ main, nodeHost }, work) {
  const text = longText(join(work, 'format'));
  const told = [];
  const format = async (typed) => {
    const out = [];
    const host = {
      ...nodeHost(),
      standardInput: async () => Buffer.from(typed),
      out: (part) => out.push(Buffer.from(part)),
      error: (line) => told.push(line),
    };
    const status = await main(['format', '-'], host);
    if (status !== 0) throw new Error(`format gave ${status}: ${told.join('')}`);
    return Buffer.concat(out).toString();
  };
  const careful = await format(text);
  const careless = careful.replaceAll(' ', '  ').replaceAll('-', 'ー');
  for (const [what, typed] of [
    ['in the usual layout', careful],
    ['typed carelessly', careless],
  ]) {
    const took = [];
    for (let round = 0; round < ROUNDS; round++) took.push((await timed(() => format(typed))).took);
    const middle = median(took);
    const rate = ((LINES / middle) * 1000).toFixed(0);
    report(`formatting ${LINES} lines ${what}`, `${milliseconds(middle)}, ${rate} lines/s`);
  }
}
