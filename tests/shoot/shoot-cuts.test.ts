import { describe, expect, it } from 'vitest';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import { runTexts } from '../../src/language/message.js';
import { filmOutput } from '../../src/shoot/film-output.js';
import { type ShootPlan, shootCuts } from '../../src/shoot/shoot-cuts.js';
import { wave } from '../sound/wave-writer.js';
import { installFilmProgram } from './film-program.js';

const NO_PROGRESS = { start() {}, step() {}, clear() {} };

/** Shoots the cuts of a world as one small film; what was reported and said. */
async function shoot(host: MemoryHost, files: readonly string[], plan: Partial<ShootPlan> = {}) {
  const found = await findCuts(host, files);
  const codes: string[] = [];
  const lines: string[] = [];
  const reporter = {
    words: runTexts('en'),
    report: (all: readonly Diagnostic[]) => void codes.push(...all.map(({ code }) => code)),
    say: (line: string) => void lines.push(line),
    tally: () => '',
    finish: () => 0,
  };
  const whole: ShootPlan = {
    output: filmOutput(host, found, 'film.mp4'),
    size: { width: 32, height: 18 },
    guides: false,
    foot: true,
    from: undefined,
    to: undefined,
    fromTyped: undefined,
    ...plan,
  };
  await shootCuts(host, reporter, found, whole, NO_PROGRESS);
  return { codes, lines };
}

const tone = wave(
  Array.from({ length: 4800 }, (_, i) => Math.sin(i / 3) / 2),
  { rate: 2400 },
);
const recorded = (number: number): string => `cut ${number}\ntime 1+0\nA: 1..\ntrack "s.wav"\n`;

describe('a film', () => {
  it('has the sound of its cuts, as long as its picture, and leaves no file of it', async () => {
    const host = memoryHost({ '1.cut': recorded(1), '2.cut': recorded(2), 's.wav': tone });
    const film = installFilmProgram(host);
    const { codes } = await shoot(host, ['1.cut', '2.cut']);
    expect(codes.filter((code) => !/^(track|sound)-/.test(code))).toEqual([]);
    expect(film.frames).toHaveLength(48);
    expect(film.sound!.length).toBe(44 + 2 * 2 * 2400);
    expect([...host.files.keys()].filter((path) => path.includes('.wav'))).toEqual(['/work/s.wav']);
  });

  it('of a range has the sound of that range', async () => {
    const host = memoryHost({ '1.cut': recorded(1), 's.wav': tone });
    const film = installFilmProgram(host);
    await shoot(host, ['1.cut'], { from: () => 7, to: () => 12 });
    expect(film.frames).toHaveLength(6);
    expect(film.sound!.length).toBe(44 + 2 * 600);
    expect(Buffer.from(film.sound!).readInt16LE(44) / 0x8000).toBeCloseTo(Math.sin(600 / 3) / 2, 3);
  });

  it('is silent where no cut has a recording', async () => {
    const host = memoryHost({ '1.cut': 'cut 1\ntime 1+0\nA: 1..\n' });
    const film = installFilmProgram(host);
    await shoot(host, ['1.cut']);
    expect(film.sound).toBeNull();
  });

  it('is as large as the episode’s pictures where nothing else is said', async () => {
    const host = memoryHost({
      'episode.yaml': 'output: 64x36\n',
      '1.cut': 'cut 1\ntime 2\nA: 1..\n',
    });
    const film = installFilmProgram(host);
    await shoot(host, ['1.cut'], { size: null });
    expect(film.frames[0]).toHaveLength(64 * 36 * 4);
  });

  it('is not begun where there is no cut to shoot', async () => {
    const host = memoryHost({ '1.cut': 'cut 1\nA: 1..\n' });
    const film = installFilmProgram(host);
    const { codes } = await shoot(host, ['1.cut']);
    expect(codes).toContain('time-missing');
    expect(film.args).toEqual([]);
  });
});
