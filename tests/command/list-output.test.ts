import { expect, test } from 'vitest';
import { listForm, listTarget } from '../../src/command/list-output.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';

test('the form is said by an option or by the ending of the file', () => {
  expect(listForm({})).toBeNull();
  expect(listForm({ csv: true })).toBe('csv');
  expect(listForm({ output: 'a.JSON' })).toBe('json');
  expect(listForm({ output: '-' })).toBe('pdf');
  expect(listForm({ output: 'rows', csv: true })).toBe('csv');
  expect(() => listForm({ output: 'a.pdf', csv: true })).toThrow('wrong-arguments');
  expect(() => listForm({ csv: true, json: true })).toThrow('wrong-arguments');
  expect(() => listForm({ output: 'a.doc' })).toThrow('option-value');
});

test('no text that was read is written over, nor any other file of the episode that is named', async () => {
  const host = memoryHost({ 'episode.yaml': '', 'c1.cut': 'cut 1\n', 'progress.csv': '' });
  const found = await findCuts(host, ['episode.yaml']);
  for (const output of ['c1.cut', 'other.cut'])
    expect(() => listTarget(host, found, { output })).toThrow('output-is-input');
  expect(listTarget(host, found, { output: 'progress.csv' }).path).toBe('/work/progress.csv');
  expect(() => listTarget(host, found, { output: 'progress.csv' }, ['/work/progress.csv'])).toThrow(
    'output-is-input',
  );
});
