import { describe, expect, test } from 'vitest';
import { otioText } from '../../src/export/otio.js';
import { clipsOf, readOtio } from '../outside-checks/otio-reader.js';
import { soundEdit } from './edit.js';

const timeline = (cuts: readonly string[], start = 0) => readOtio(otioText(soundEdit(cuts), start));

describe('a timeline', () => {
  test('has the whole sheet as media, and what lies between the cut points as source', () => {
    const [one] = clipsOf(timeline(['time 2+0\noverlap out 12', 'time 2+0\noverlap in 12']));
    expect(one!.source_range).toMatchObject({ start_time: { value: 0 }, duration: { value: 48 } });
    expect(one!.media_references.DEFAULT_MEDIA).toMatchObject({
      name: '1',
      available_range: { start_time: { value: 0 }, duration: { value: 54 } },
    });
  });

  test('marks notes and fades on their frames', () => {
    const [clip] = clipsOf(timeline(['time 2+0\nnote 13 "bell"\nfade out 37..48']));
    const said = clip!.markers.map(({ name, comment, marked_range: { start_time, duration } }) => [
      name,
      comment,
      start_time.value,
      duration.value,
    ]);
    expect(said).toEqual([
      ['F.O', 'in the finished picture', 36, 12],
      ['note', 'bell', 12, 1],
    ]);
  });

  test('says in its metadata what the format has no place for', () => {
    const lines =
      'cut 12A "Rooftop"\ntime 2+0\nscene 3\ntake 2\nartist "M. Arai"\nB: 1-2..\nvoice "Nao" off 2..9 "Wait" @5 "for me!"';
    const [clip] = clipsOf(timeline([lines]));
    expect(clip!.name).toBe('12A Rooftop');
    expect(clip!.metadata.cutwright).toMatchObject({
      cut: '12A',
      title: 'Rooftop',
      scene: '3',
      take: '2',
      artists: ['M. Arai'],
      time: 48,
      length: 48,
      handles: { head: 0, tail: 0 },
      // A: 1; B: 1, 2 and one between.
      counts: { keys: 3, inbetweens: 1, drawings: 4 },
      spoken: [{ kind: 'voice', speaker: 'Nao', manner: 'off', from: 2, to: 9, text: 'Wait for me!' }],
    });
  });

  test('counts the frames of its own speed, from where the record begins', () => {
    const { global_start_time } = timeline(['fps 12\ntime 12'], 43_200);
    expect(global_start_time).toMatchObject({ rate: 12, value: 43_200 });
  });
});
