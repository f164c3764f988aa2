import { expect, test } from 'vitest';
import { celsEdits, LINE_COLUMNS } from '../../src/language/cels-line.js';
import { parse } from '../../src/language/parse.js';
import { displayWidth } from '../../src/language/source.js';
import { withEdits } from '../../src/language/statement-reader.js';

function after(text: string, added: Record<string, string[]>): string {
  const edits = celsEdits(text, parse('this.cut', text).tree, new Map(Object.entries(added)));
  return withEdits(
    text,
    edits.map(({ span, text: by }) => ({ ...span, text: by })),
  );
}

test('names go to the end of the line that a level has', () => {
  expect(after('A: 1-2\ncels A 1 2 # so far\nmemo "x"\n', { A: ['1.1', '3'] })).toBe(
    'A: 1-2\ncels A 1 2 1.1 3 # so far\nmemo "x"\n',
  );
});

test('a level without one gets it under the timelines that stand together', () => {
  expect(after('A: 1\nB: 1\n\nC: 1\n', { A: ['1'], B: ['1'], C: ['1'] })).toBe(
    'A: 1\nB: 1\ncels A 1\ncels B 1\n\nC: 1\ncels C 1\n',
  );
});

test('a mouth has its line as a timeline has', () => {
  expect(after('A: 1\nmouth B "Nao" 1 2 3\n\nvoice "Nao" 1..12 "Wait!"\n', { A: ['1'], B: ['1', '3'] })).toBe(
    'A: 1\nmouth B "Nao" 1 2 3\ncels A 1\ncels B 1 3\n\nvoice "Nao" 1..12 "Wait!"\n',
  );
});

test('under the lines of others that stand there', () => {
  expect(after('A: 1\nB: 1\ncels B 1\nmemo "x"', { A: ['1'] })).toBe(
    'A: 1\nB: 1\ncels B 1\ncels A 1\nmemo "x"',
  );
});

test('nothing changes for a level that gets none', () => {
  const text = 'A: 1\ncels A 1\nB: 1\n';
  expect(after(text, { A: [], B: [], C: ['1'] })).toBe(text);
});

test('lines end as those of the text do', () => {
  expect(after('A: 1\r\nmemo "x"\r\n', { A: ['1'] })).toBe('A: 1\r\ncels A 1\r\nmemo "x"\r\n');
  expect(after('A: 1', { A: ['1'] })).toBe('A: 1\ncels A 1');
});

test('long ones go on in lines under the names, none too long, no name lost', () => {
  const names = Array.from({ length: 60 }, (_, i) => `${i + 1}.1`);
  const written = after('A: 1\n', { A: names });
  const lines = written.trimEnd().split('\n').slice(1);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(displayWidth(line)).toBeLessThanOrEqual(LINE_COLUMNS);
  expect(lines[1]).toMatch(/^ {7}\d/);
  expect(written.slice(5).split(/\s+/).filter(Boolean)).toEqual(['cels', 'A', ...names]);
  expect(parse('this.cut', written).diagnostics).toEqual([]);
});

test('an existing line is filled, then goes on as far in as its last line', () => {
  const filled = `cels A ${Array.from({ length: 30 }, (_, i) => i + 10).join(' ')}`;
  expect(displayWidth(filled)).toBe(96);
  expect(after(`A: 1\n${filled}\n`, { A: ['77', '78'] })).toBe(`A: 1\n${filled} 77\n       78\n`);
  expect(after(`A: 1\ncels A 1\n   ${filled.slice(7)}\n`, { A: ['777777', '78'] })).toContain(
    '39 777777\n   78\n',
  );
});
