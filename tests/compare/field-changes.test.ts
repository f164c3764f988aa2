/** Fields of two versions, and where the camera rests. */

import { expect, test } from 'vitest';
import { fieldChanges, near } from '../../src/compare/field-changes.js';
import { CAMERA, edits, TRUCK } from './edits.js';
import { note, solved } from './say.js';

edits(CAMERA, [
  ['field B full at 110,0', 'field B full at 100,3', 'field B 10 mm left, 3 mm up: at 100,3 (was 110,0)'],
  ['60% at', '50% at', 'field C smaller: 50%, 127 mm (was 60%, 152.4 mm)'],
  ['cw 5', 'cw 8', 'field C turned 3° clockwise: 8° (was 5°)'],
  ['field C 60% at 20,0 cw 5\n', '', 'field C dropped'],
  ['field D', 'field E', 'field D is called E'],
]);

edits(TRUCK, [['50% at 20,0', '40% at 20,0', 'field B smaller: 40%, 101.6 mm (was 50%, 127 mm)']]);

test('the name of a field may change wherever it stands', () => {
  const now = CAMERA.replace('field B full', 'field Z full').replace('> B@3+13', '> Z@3+13');
  expect(note(CAMERA, now)).toEqual(['field B is called Z']);
});

const cut = (...lines: string[]) => solved(`cut 1\ntime 2+0\nA: 1..\n${lines.join('\n')}\n`);

test('numbers are the same to the sixth decimal', () => {
  expect(near(1, 1 + 9e-7)).toBe(true);
  expect(near(1, 1 + 2e-6)).toBe(false);
});

test('fields are called by their new names, the standard field among them', () => {
  const { names, changes } = fieldChanges(cut('field B 60% at 20,0'), cut('field Z 60% at 20,0'));
  expect([...names]).toEqual([
    ['full', 'full'],
    ['B', 'Z'],
  ]);
  expect(changes).toMatchObject([
    { kind: 'field-renamed', field: 'Z', old: 'B', place: { kind: 'camera' }, rows: null },
  ]);
});

test('a field elsewhere under another name is another one', () => {
  const { changes } = fieldChanges(cut('field B 60% at 20,0'), cut('field Z 60% at 25,0'));
  expect(changes.map(({ kind }) => kind)).toEqual(['field-added', 'field-dropped']);
});

test('where the camera rests is told, but not of one that moves', () => {
  const fields = ['field A full', 'field B 60% at 20,0'];
  expect(fieldChanges(cut(...fields, 'fix A'), cut(...fields, 'fix B')).changes).toMatchObject([
    { kind: 'fix', old: 'A', now: 'B' },
  ]);
  expect(fieldChanges(cut(...fields, 'fix A'), cut(...fields, 'truck B@1 > A@24')).changes).toEqual([]);
});

test('the field that it rests on may change its name', () => {
  const { changes } = fieldChanges(cut('field B 60% at 20,0', 'fix B'), cut('field Z 60% at 20,0', 'fix Z'));
  expect(changes.map(({ kind }) => kind)).toEqual(['field-renamed']);
});
