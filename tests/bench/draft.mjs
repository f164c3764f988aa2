/** Tables to texts: the exposures of a cut of ten minutes as CSV, made into a cut. */
import { median, milliseconds, report, timed } from './measure.mjs';

const FRAMES = 14_400;
const ROUNDS = 5;

/** A grid with a cycle, a hold that grows and keys that do not come back. */
function grid() {
  let rows = 'frame,A,B,C\n';
  for (let i = 0; i < FRAMES; i++) {
    const a = (Math.floor(i / 2) % 12) + 1;
    const b = Math.floor(Math.sqrt(i * 40)) + 1;
    rows += `${i + 1},${a},${b},${i % 240 < 12 ? 'x' : (i % 7) + 1}\n`;
  }
  return rows;
}

export async function measureDraft({ main, nodeHost }) {
  const table = Buffer.from(grid());
  const took = [];
  for (let round = 0; round < ROUNDS; round++) {
    const told = [];
    const host = {
      ...nodeHost(),
      standardInput: async () => table,
      out: () => {},
      error: (line) => told.push(line),
    };
    const { took: one, value: status } = await timed(() =>
      main(['new', 'cut', '1', '--from-csv', '-', '-o', '-'], host),
    );
    if (status !== 0) throw new Error(`new gave ${status}: ${told.join('')}`);
    took.push(one);
  }
  const middle = median(took);
  const rate = ((FRAMES / middle) * 1000).toFixed(0);
  report(
    `a table of ${FRAMES} rows and three levels made into a cut`,
    `${milliseconds(middle)}, ${rate} rows/s`,
  );
}
