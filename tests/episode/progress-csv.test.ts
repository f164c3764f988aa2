import { describe, expect, test } from 'vitest';
import { parseProgress, withRow } from '../../src/episode/progress-csv.js';
import { messageOf } from '../../src/language/message.js';

const STAGES = ['layout', 'key', 'in-between'];
const read = (text: string) => parseProgress('progress.csv', text, STAGES);
/** Line, column and sentence of each fault. */
const faults = (text: string): string[] =>
  read(text).diagnostics.map((one) => {
    const before = text.slice(0, one.span.start).split('\n');
    return `${before.length}:${before.at(-1)!.length + 1} ${messageOf(one, 'en')}`;
  });
const HEAD = 'cut,stage,state,date,person,note\n';

describe('a table', () => {
  test('says a row each', () => {
    expect(read(`${HEAD}12,key,retake,2027-03-19,K. Brandt,"short, from A5"\n`).rows).toMatchObject([
      {
        ...{ cut: '12', key: '12', stage: 'key', state: 'retake', date: '2027-03-19' },
        ...{ person: 'K. Brandt', note: 'short, from A5' },
      },
    ]);
  });

  test('has its columns in any order, others among them, and may lack some', () => {
    const { rows, diagnostics } = read('Date,paid?,Cut,STAGE\n2027/3/9,yes,012A,Key\n'.replace('Key', 'key'));
    expect(diagnostics).toEqual([]);
    expect(rows).toMatchObject([
      { cut: '012A', key: '12A', stage: 'key', state: 'done', date: '2027-03-09' },
    ]);
  });

  test('comes from any spreadsheet: semicolons, tabs, CR LF, empty rows, short rows, full-width letters', () => {
    for (const [sign, end] of [
      [';', '\r\n'],
      ['\t', '\n'],
      [',', '\r'],
    ] as const) {
      const text = [
        `cut${sign}stage${sign}date${sign}person`,
        `１２${sign}key${sign}2027-03-19`,
        `${sign}${sign}${sign}`,
        '',
      ].join(end);
      expect(read(text).rows, JSON.stringify(sign)).toMatchObject([{ key: '12', person: '' }]);
      expect(read(text).diagnostics).toEqual([]);
    }
  });

  test('may be empty', () => {
    for (const text of ['', '\r\n', HEAD]) expect(read(text)).toMatchObject({ rows: [], diagnostics: [] });
  });
});

describe('a row that cannot be read has its line and column, and costs no other', () => {
  const row = (line: string) => `${HEAD}${line}\n13,key,done,2027-03-20,,\n`;
  test.each([
    ['12,kye,done,2027-03-19', '2:4 `kye` is no stage; did you mean `key`?'],
    ['12,paint,done,2027-03-19', '2:4 `paint` is no stage; the stages are layout, key, in-between.'],
    ['12,key,don,2027-03-19', '2:8 `don` is no state; did you mean `done`?'],
    ['12,key,lost,2027-03-19', '2:8 `lost` is no state: a cut is started, done or retake.'],
    ['12,key,done,19.3.27', '2:13 `19.3.27` is no day with the year first, such as 2027-03-19.'],
    ['12,key,done,', '2:13 This row has no day; write it with the year first, such as 2027-03-19.'],
    [',key,done,2027-03-19', '2:1 This row names no cut.'],
    ['12,,done,2027-03-19', '2:4 This row names no stage.'],
    [
      '12,key,done,2027-03-19,K. Brandt,short, from A5',
      '2:40 This row has 7 cells under 6 columns: a text with a comma stands in quotes.',
    ],
    ['<<<<<<< HEAD', '2:8 This row names no stage.'],
  ])('%s', (line, said) => {
    const found = faults(row(line));
    expect(found[0]).toBe(line === '<<<<<<< HEAD' ? found[0] : said);
    expect(found[0]).toContain(said.slice(said.indexOf(' ') + 1));
    expect(read(row(line)).rows.map(({ cut }) => cut)).toEqual(['13']);
  });

  test('a misspelt word is mended by the fix', () => {
    const text = row('12,kye,done,2027-03-19');
    const { start, end } = read(text).diagnostics[0]!.fix!.edits[0]!.span;
    expect(text.slice(start, end)).toBe('kye');
  });
});

describe('a table that cannot be read at all', () => {
  test.each([
    ['kut,stage,date\n', '1:1 The first row names no column `cut`; did you mean it by `kut`?'],
    ['cut,stage\n', '1:1 The first row names no column `date`.'],
    ['cut,stage,date,cut\n', '1:16 The column `cut` stands here already.'],
    ['cut,stage,date\n1,"key,2027-03-01\n', '2:1 A quote that is opened here is never closed.'],
  ])('%j', (text, said) => {
    expect(faults(text)[0]).toBe(said);
    expect(read(text)).toMatchObject({ rows: [], columns: null });
  });
});

describe('a row more', () => {
  const cells = { cut: '12', stage: 'key', state: 'done', date: '2027-03-19', person: 'L. Quoy', note: '' };
  const more = (text: string, some = {}) => withRow(read(text), { ...cells, ...some });

  test('begins a new file with its heads, lines ended as RFC 4180 has it', () => {
    expect(more('')).toEqual({
      text: 'cut,stage,state,date,person,note\r\n12,key,done,2027-03-19,L. Quoy,\r\n',
    });
  });

  test('stands behind all others, which stay as they are to the character', () => {
    const text = 'person;Cut;stage;date;paid;state\r\n"Esk; R.";1;key;2027-03-01;"x";\r\n\r\n';
    expect(more(text, { person: 'L; Quoy' })).toEqual({
      text: `${text.slice(0, -2)}"L; Quoy";12;key;2027-03-19;;done\r\n`,
    });
  });

  test('is put on a line of its own where the last one was not ended', () => {
    expect(more(`${HEAD}1,key,done,2027-03-01,,`)).toMatchObject({
      text: `${HEAD}1,key,done,2027-03-01,,\n12,key,done,2027-03-19,L. Quoy,\n`,
    });
  });

  test('is read as it was written, whatever its texts hold', () => {
    for (const note of ['a "b", c', 'two\nlines', ' blank ', '；', '汐見']) {
      const made = more(HEAD, { note });
      expect('text' in made && read(made.text).rows.at(-1)!.note, note).toBe(note.trim());
    }
  });

  test('is not written where what it says has no column', () => {
    const text = 'cut,stage,date\n';
    expect(more(text)).toEqual({ missing: 'person' });
    expect(more(text, { person: '', state: 'retake' })).toEqual({ missing: 'state' });
    expect(more(text, { person: '' })).toEqual({ text: 'cut,stage,date\n12,key,2027-03-19\n' });
  });
});
