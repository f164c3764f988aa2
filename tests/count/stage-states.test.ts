import { describe, expect, test } from 'vitest';
import { cutStanding, inOrderOfDates } from '../../src/count/stage-states.js';
import { stageRows } from './stages.js';

const STAGES = ['layout', 'key', 'in-between', 'shoot'];
const standing = (...lines: readonly string[]) => cutStanding(stageRows(...lines), STAGES);
const states = (...lines: readonly string[]): string =>
  standing(...lines)
    .standings.map(({ state }) => state)
    .join(' ');
const findings = (...lines: readonly string[]): string[] =>
  standing(...lines).findings.map((one) => `${one.kind} ${one.row.stage}`);

describe('a cut at its stages', () => {
  test('is open until somebody begins', () => {
    expect(states()).toBe('open open open open');
    expect(states('1 layout started 2027-03-01')).toBe('started open open open');
  });

  test('goes by the days, not by the order of the rows', () => {
    const lines = ['1 layout done 2027-03-05', '1 layout started 2027-03-01'];
    expect(states(...lines)).toBe('done open open open');
    expect(findings(...lines)).toEqual([]);
  });

  test('keeps the order of the rows within one day', () => {
    expect(states('1 layout done 2027-03-05', '1 layout retake 2027-03-05')).toBe('retake open open open');
    expect(states('1 layout done 2027-03-05', '1 layout retake 2027-03-05', '1 layout done 2027-03-05')).toBe(
      'done open open open',
    );
  });

  test('is sent back by a retake, and the stages behind it are open again', () => {
    const lines = [
      '1 layout done 2027-03-01',
      '1 key done 2027-03-05',
      '1 in-between done 2027-03-09',
      '1 key retake 2027-03-10',
    ];
    expect(states(...lines)).toBe('done retake open open');
    expect(standing(...lines).retakes.map(({ date }) => date)).toEqual(['2027-03-10']);
    expect(states(...lines, '1 key done 2027-03-12')).toBe('done done open open');
  });

  test('is paid to whoever had it done first, whatever comes later', () => {
    const { standings } = standing(
      '1 layout done 2027-03-01 Tarn',
      '1 layout retake 2027-03-02 Falk',
      '1 layout done 2027-03-03 Quoy',
    );
    expect([standings[0]!.firstDone!.person, standings[0]!.row!.person]).toEqual(['Tarn', 'Quoy']);
  });

  test('takes nothing from stages that the episode does not have', () => {
    expect(states('1 paint done 2027-03-01')).toBe('open open open open');
  });
});

describe('what does not fit', () => {
  const done = ['1 layout done 2027-03-01', '1 key done 2027-03-05'];

  test('a stage that is done twice, and one that is started when it is done', () => {
    expect(findings(...done, '1 key done 2027-03-06')).toEqual(['done-twice key']);
    expect(findings(...done, '1 key started 2027-03-06')).toEqual(['started-late key']);
    expect(states(...done, '1 key started 2027-03-06')).toBe('done done open open');
  });

  test('none where a retake stands between', () => {
    expect(findings(...done, '1 key retake 2027-03-06', '1 key done 2027-03-07')).toEqual([]);
  });

  test('a later stage that is done before an earlier one', () => {
    const early = findings(...done.slice(1), '1 layout done 2027-03-06');
    expect(early).toEqual(['early key']);
    expect(standing('1 shoot done 2027-03-05').findings).toMatchObject([{ missing: 'layout' }]);
  });

  test('not where both are done on one day, in any order', () => {
    expect(findings('1 key done 2027-03-01', '1 layout done 2027-03-01')).toEqual([]);
  });

  test('a stage that is done while the one before it is sent back', () => {
    expect(findings(...done, '1 key retake 2027-03-06', '1 in-between done 2027-03-07')).toEqual([
      'early in-between',
    ]);
  });

  test('a retake of what was never done', () => {
    expect(findings('1 layout retake 2027-03-01')).toEqual(['retake-open layout']);
  });
});

test('rows of one day stay as they are', () => {
  const rows = stageRows('1 a done 2027-03-02', '2 a done 2027-03-01', '3 a done 2027-03-02');
  expect(inOrderOfDates(rows).map(({ cut }) => cut)).toEqual(['2', '1', '3']);
});
