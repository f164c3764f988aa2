import { beforeEach, describe, expect, test } from 'vitest';
import { filmOfCut, filmOfEpisode } from '../../../src/preview/player/film.js';
import { PlayControl } from '../../../src/preview/player/play-control.js';
import { answer } from './answers.js';

let now: number;
let shown: number[];
let runs: boolean[];
let control: PlayControl;

const cut = (rows: number) => filmOfCut(answer('c1', rows));
const caution = { text: 'CAUTION', language: 'en' };

beforeEach(() => {
  now = 50;
  shown = [];
  runs = [];
  control = new PlayControl({
    now: () => now,
    soonest: () => now,
    show: (frame) => shown.push(frame),
    changed: () => {},
    runs: (playing) => runs.push(playing !== null),
  });
  control.open(cut(48));
});

/** A clock that ticks 60 times a second for so long. */
function pass(seconds: number): void {
  const end = now + seconds;
  for (; now < end; now += 1 / 60) control.tick();
  now = end;
  control.tick();
}

describe('a cut', () => {
  test('does not run by itself', () => {
    pass(1);
    expect([control.frame, control.playing]).toEqual([1, null]);
  });

  test('plays each of its frames once, and stops on the last one', () => {
    control.play();
    pass(3);
    expect(shown).toEqual(Array.from({ length: 48 }, (_, i) => i + 1));
    expect([control.playing, runs]).toEqual([null, [true, false]]);
  });

  test('leaves out frames for which there was no time, and is on the right one again', () => {
    control.play();
    pass(0.5);
    now += 0.5;
    control.tick();
    expect(control.frame).toBe(25);
  });

  test('goes on from where it was stopped, and from its beginning when it has ended', () => {
    control.play();
    pass(0.5);
    control.stop();
    expect(control.frame).toBe(13);
    now += 100;
    control.play();
    control.tick();
    expect(control.frame).toBe(13);
    pass(9);
    control.play();
    expect(control.frame).toBe(1);
  });

  test('is gone through a frame at a time, to both of its ends', () => {
    control.step(1);
    control.step(1);
    control.step(-1);
    expect(control.frame).toBe(2);
    control.step(-9);
    expect(control.frame).toBe(1);
    control.seek(999);
    control.step(1);
    expect(control.frame).toBe(48);
  });

  test('that runs is stopped by a step, and jumps on without stopping', () => {
    control.play();
    control.jump(20);
    expect(control.playing).not.toBeNull();
    pass(0.25);
    expect(control.frame).toBe(26);
    control.step(1);
    expect([control.frame, control.playing]).toEqual([27, null]);
  });

  test('takes another speed from the frame where it is', () => {
    control.play();
    pass(0.5);
    control.setSpeed(1 / 4);
    pass(1);
    expect(control.frame).toBe(13 + 6);
  });

  test('looped begins again at once', () => {
    control.setLoop(true);
    control.play();
    pass(2 + 0.5);
    expect(control.frame).toBe(13);
  });
});

describe('a range', () => {
  test('is looped, and entered where the cut stands outside of it', () => {
    control.setRange({ first: 11, last: 16 });
    expect(control.loop).toBe(true);
    control.play();
    expect(control.frame).toBe(11);
    pass(0.25);
    expect(control.frame).toBe(11);
    pass(0.125);
    expect(control.frame).toBe(14);
  });

  test('chosen while it runs holds at once', () => {
    control.play();
    pass(1);
    control.setRange({ first: 3, last: 8 });
    control.tick();
    expect(control.frame).toBe(3);
  });
});

describe('a text that changes while it plays', () => {
  test('goes on from the same frame', () => {
    control.play();
    pass(1);
    control.exchange(cut(96), control.frame);
    pass(0.5);
    expect(control.frame).toBe(37);
    expect(control.playing).not.toBeNull();
  });

  test('goes on from its last frame where it has become shorter', () => {
    control.play();
    pass(1.5);
    control.exchange(cut(12), control.frame);
    expect(control.frame).toBe(12);
    pass(0.1);
    expect([control.frame, control.playing]).toEqual([12, null]);
  });

  test('takes the range along as far as there are frames', () => {
    control.setRange({ first: 20, last: 40 });
    control.exchange(cut(30), 25);
    expect(control.played).toEqual({ first: 20, last: 30 });
  });

  test('stops before light that flashes now', () => {
    control.play();
    pass(0.5);
    control.exchange(filmOfCut(answer('c1', 48, { caution })), control.frame);
    expect([control.playing, control.caution]).toEqual([null, 'c1']);
  });
});

describe('flashing light', () => {
  test('does not play before somebody has read the caution', () => {
    control.open(filmOfCut(answer('c1', 48, { caution })));
    control.play();
    pass(1);
    expect([control.frame, control.playing, control.caution]).toEqual([1, null, 'c1']);
    control.allow();
    pass(0.5);
    expect([control.frame, control.caution]).toEqual([13, null]);
    control.stop();
    control.play();
    expect(control.playing).not.toBeNull();
  });

  test('stops an episode before the first frame on which its cut is seen', () => {
    const source = { from: 4, frames: 20 };
    control.open(
      filmOfEpisode({
        fps: 24,
        frames: 40,
        word: '',
        cuts: [
          { id: 'c1', flashes: false, heard: false, source, record: 0, dissolve: null },
          { id: 'c2', flashes: true, heard: false, source, record: 20, dissolve: { before: 4, after: 4 } },
        ],
      }),
    );
    control.play();
    pass(2);
    expect([control.frame, control.caution]).toEqual([16, 'c2']);
    control.allow();
    pass(0.5);
    expect(control.frame).toBe(28);
  });
});

test('another film does not run', () => {
  control.play();
  control.open(cut(10), 99);
  pass(1);
  expect([control.frame, control.playing]).toEqual([10, null]);
});
