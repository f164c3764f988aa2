/** The move or light that a change is about. */

import { expect, test } from 'vitest';
import { type CameraThing, rowsOfThing, subjectOf } from '../../src/compare/camera-subject.js';
import { earlierLevels, nowCalled } from '../../src/compare/changed-rows.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { solved } from './say.js';

/** `shake 1-12 | shake 1-14` of each change. */
function subjects(old: string, now: string): string[] {
  const [was, is] = [old, now].map((camera) => solved(`cut 1\ntime 3+0\nstack A B\nA: 1..\n${camera}\n`)) as [
    ReturnType<typeof solved>,
    ReturnType<typeof solved>,
  ];
  const name = (thing: CameraThing | null) => {
    if (!thing) return 'none';
    const { from, to } = rowsOfThing(thing);
    return `${'move' in thing ? thing.move.kind : thing.light.kind} ${from}-${to}`;
  };
  const changes = compare(was, is);
  const called = nowCalled(earlierLevels(changes));
  return changes.map((change) => {
    const subject = subjectOf(was, is, change, called);
    return subject ? `${change.kind}: ${name(subject.was)} | ${name(subject.is)}` : `${change.kind}: -`;
  });
}

test('is the one of its kind', () => {
  expect(subjects('shake 3mm 1..12\nglow A 1..6', 'shake 4mm 1..12\nglow A 1..8')).toEqual([
    'move-manner: shake 1-12 | shake 1-12',
    'light-time: glow 1-6 | glow 1-8',
  ]);
});

test('is the one of its levels, and of several alike the nearest', () => {
  const pulls = (a: number, b: number, to: number) =>
    `pull A left ${a}mm/f 1..${to}\npull B left ${b}mm/f 1..24`;
  expect(subjects(pulls(1, 2, 12), pulls(1, 3, 12))).toEqual(['move-way: pull 1-24 | pull 1-24']);
  const shakes = (size: number) => `shake 3mm 1..12\nshake ${size}mm 25..30\nshake 3mm 49..60`;
  expect(subjects(shakes(3), shakes(4))).toEqual(['move-manner: shake 25-30 | shake 25-30']);
});

test('is in one version alone where it is added or dropped', () => {
  expect(subjects('', 'shake 3mm 1..12')).toEqual(['move-added: none | shake 1-12']);
  expect(subjects('effect "rain" A 1..4', '')).toEqual(['light-dropped: effect 1-4 | none']);
});

test('is a pan that was a truck', () => {
  const found = subjects(
    'field K 60% at 20,0\ntruck full@1 > K@24',
    'field K full at 20,0\npan full@1 > K@24',
  );
  expect(found).toContain('move-manner: truck 1-24 | pan 1-24');
});

test('is none where a field, a level or a word is said to change', () => {
  const on = (share: number) => `field K ${share}%\nfix K\nnote ${share} "dust"`;
  expect(subjects(on(60), on(50))).toEqual(['note-moved: -', 'field-resized: -']);
});
