import { describe, expect, test } from 'vitest';
import { compileText } from '../../compile.js';

/** The drawings of the topmost level, frame by frame. */
function shown(text: string, time = '2+0') {
  const { solved, diagnostics } = compileText(`cut 1\ntime ${time}\n${text}\n`);
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  const level = solved!.levels.at(-1)!;
  return { level, rows: level.exposures.map(({ drawing }) => drawing).join('') };
}

const rowsOf = (text: string, time?: string) => shown(text, time).rows;

describe('the timeline of a mouth', () => {
  test('is closed wherever nobody speaks, and opens before the line by its lead', () => {
    const rows = rowsOf('mouth A "Nao" 1 2 3\nvoice "Nao" 13..36 "ああああ"');
    expect(rows).toBe(`${'1'.repeat(11)}${'3'.repeat(23)}${'1'.repeat(14)}`);
  });

  test('a longer lead moves the whole mouth', () => {
    const at = (lead: number) =>
      rowsOf(`mouth A "Nao" 1 2 3 lead ${lead}\nvoice "Nao" 13..36 "ああああ、いいいい"`);
    expect(at(2).slice(0, -2)).toBe(at(0).slice(2));
  });

  test('a lead before the first row is left out', () => {
    const rows = rowsOf('mouth A "Nao" 1 2 3 lead 2\nvoice "Nao" 1..24 "ああああ"');
    expect(rows).toBe(`${'3'.repeat(21)}${'1'.repeat(27)}`);
  });

  test('of two lines of one speaker that overlap the later one is seen from its beginning on', () => {
    const rows = rowsOf('mouth A "Nao" 1 2 3\nvoice "Nao" 7..30 "ああああ"\nvoice "Nao" 19..42 "いいいい"');
    expect(rows).toBe(`${'1'.repeat(5)}${'3'.repeat(12)}${'2'.repeat(23)}${'1'.repeat(8)}`);
  });

  test('lines that follow each other are closed between', () => {
    const rows = rowsOf('mouth A "Nao" 1 2 3\nvoice "Nao" 25..36 "ああ"\nvoice "Nao" 13..24 "ああ"');
    expect(rows).toBe(`${'1'.repeat(11)}${'3'.repeat(11)}1${'3'.repeat(11)}${'1'.repeat(14)}`);
  });

  test('only the speaker in the picture moves it', () => {
    expect(
      rowsOf(
        'mouth A "Nao" 1 2 3\nvoice "Nao" off 1..12 "ああ"\nvoice "Nao" mono 13..24 "ああ"\nvoice "Pim" 25..36 "ああ"',
      ),
    ).toBe('1'.repeat(48));
  });

  test('one drawing may stand for several mouths', () => {
    expect(new Set(rowsOf('mouth A "Nao" 1 2 2\nvoice "Nao" 7..40 "いろはにほへと"'))).toEqual(
      new Set(['1', '2']),
    );
  });

  test('drawings are on what the cut says, or the mouth itself', () => {
    const line = 'voice "Nao" 7..40 "いろはにほへと、ちりぬるを"';
    const least = (text: string) =>
      Math.min(...[...rowsOf(text).matchAll(/(.)\1*/g)].slice(1, -2).map(([run]) => run.length));
    expect(least(`on 3\nmouth A "Nao" 1 2 3\n${line}`)).toBe(3);
    expect(least(`on 3\nmouth A "Nao" 1 2 3 on 1\n${line}`)).toBe(1);
  });

  test('a line keeps its flaps when it is moved', () => {
    const at = (row: number) =>
      rowsOf(`mouth A "Nao" 1 2 3 on 3 flaps\nvoice "Nao" ${row}..${row + 29} "ああ"`);
    expect(at(13).slice(6)).toBe(at(7).slice(0, -6));
  });

  test('words that nobody can read flap', () => {
    const line = 'voice "Nao" 7..42';
    const { solved, diagnostics } = compileText(`cut 1\ntime 2+0\nmouth A "Nao" 1 2 3\n${line} "行く"\n`);
    expect(diagnostics.map(({ code }) => code)).toEqual(['mouth-unread']);
    const flaps = compileText(`cut 1\ntime 2+0\nmouth A "Nao" 1 2 3 flaps\n${line} "行く"\n`);
    expect(flaps.diagnostics).toEqual([]);
    expect(solved!.levels[1]!.exposures).toEqual(flaps.solved!.levels[1]!.exposures);
  });
});

describe('a mouth is a level like any other', () => {
  const LINE = 'voice "Nao" 7..40 "いろはにほへと"';

  test('its drawings are numbered as they are first shown, or as they are pinned', () => {
    const cels = (text: string) => shown(text).level.drawings.map(({ drawing, cel }) => `${drawing}=${cel}`);
    expect(cels('mouth A "Nao" 1 2 3\nvoice "Nao" 7..40 "ありがとう"')).toEqual(['1=1', '3=2', '2=3']);
    expect(cels('mouth A "Nao" 1 2 3\nvoice "Nao" 7..40 "ありがとう"\ncels A 1 2 3')).toEqual([
      '1=1',
      '2=2',
      '3=3',
    ]);
  });

  test('a drawing that is not seen is not drawn', () => {
    const { solved } = compileText('cut 1\ntime 2+0\nmouth A "Nao" 1 2 3\nvoice "Nao" 7..40 "ああああ"\n');
    expect(solved!.counts).toMatchObject({ drawings: 2, keys: 2 });
  });

  test('it reuses the mouth of another cut', () => {
    const { solved } = compileText(`cut 1\ntime 2+0\nmouth A "Nao" 1 2 3\nlevel A reuse 8/A\n${LINE}\n`);
    expect(solved!.counts).toMatchObject({ drawings: 0, reused: 3 });
  });

  test('it follows marks, a retime and the handles of an overlap', () => {
    const rows = rowsOf('mark said 7\nmouth A "Nao" 1 2 3\nvoice "Nao" said..said+23 "ああああ"');
    expect(rows).toBe(rowsOf('mouth A "Nao" 1 2 3\nvoice "Nao" 7..30 "ああああ"'));
    const later = rowsOf('mark said 13\nmouth A "Nao" 1 2 3\nvoice "Nao" said..said+23 "ああああ"');
    expect(later.slice(6)).toBe(rows.slice(0, -6));
    const handles = rowsOf('overlap in 12\nmouth A "Nao" 1 2 3\nvoice "Nao" 7..30 "ああああ"');
    expect(handles).toBe(`${rows}${'1'.repeat(6)}`);
  });

  test('it stands beside phrases and timelines, in the order of writing', () => {
    const { solved } = compileText(
      `cut 1\ntime 2+0\nphrase blink = 1-2:3 1.1\nA: 1:12 blink 1..\nmouth B "Nao" 1 2 3\nC: blink 1..\n${LINE}\n`,
    );
    expect(solved!.levels.map(({ name, title }) => [name, title])).toEqual([
      ['BG', ''],
      ['A', ''],
      ['B', 'Nao, mouth'],
      ['C', ''],
    ]);
  });
});
