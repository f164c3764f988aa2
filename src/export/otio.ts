/**
 * An edit as OpenTimelineIO, the open interchange format for editorial timelines. Names and shape of every object are those of its
 * published serialized schemas.
 */

import type { Light } from '../shot/camera/camera-model.js';
import type { EditCut, EpisodeEdit, Handed } from './episode-edit.js';

/** A version for what stands under `cutwright` in the metadata. */
const METADATA_VERSION = 1;

type Json = { readonly [key: string]: unknown };

/** `start`: where the record begins, in frames. */
export function toOtio({ title, fps, cuts, frames }: EpisodeEdit, start: number): Json {
  const time = timesOf(fps);
  const children = cuts.flatMap((cut) => [...transition(cut, time), clip(cut, time)]);
  const { settings } = cuts[0]!.solved.shot;
  return {
    OTIO_SCHEMA: 'Timeline.1',
    metadata: {
      cutwright: {
        version: METADATA_VERSION,
        title: settings.title,
        episode: settings.episode,
        frames,
        overlap: settings.overlap,
      },
    },
    name: title,
    global_start_time: time.at(start),
    tracks: {
      OTIO_SCHEMA: 'Stack.1',
      ...item('tracks'),
      children: [{ OTIO_SCHEMA: 'Track.1', ...item('picture'), kind: 'Video', children }],
    },
  };
}

/** The text of an `.otio` file. */
export function otioText(edit: EpisodeEdit, start: number): string {
  return `${JSON.stringify(toOtio(edit, start), null, 2)}\n`;
}

type Times = ReturnType<typeof timesOf>;

function timesOf(rate: number) {
  const at = (value: number): Json => ({ OTIO_SCHEMA: 'RationalTime.1', rate, value });
  return {
    at,
    range: (from: number, frames: number): Json => ({
      OTIO_SCHEMA: 'TimeRange.1',
      duration: at(frames),
      start_time: at(from),
    }),
  };
}

/** What all things that stand on a timeline have. */
function item(name: string, more: { range?: Json; markers?: readonly Json[]; metadata?: Json } = {}): Json {
  const { range = null, markers = [], metadata = {} } = more;
  return { metadata, name, source_range: range, effects: [], markers, enabled: true };
}

function clip({ solved, name, source }: EditCut, time: Times): Json {
  const { shot } = solved;
  return {
    OTIO_SCHEMA: 'Clip.2',
    ...item(name, {
      range: time.range(source.from, source.frames),
      markers: [...fades(solved).map((fade) => fadeMarker(fade, time)), ...notes(solved, time)],
      metadata: { cutwright: about(solved) },
    }),
    media_references: {
      DEFAULT_MEDIA: {
        OTIO_SCHEMA: 'MissingReference.1',
        metadata: {},
        name: shot.cut,
        available_range: time.range(0, shot.length),
        available_image_bounds: null,
      },
    },
    active_media_reference_key: 'DEFAULT_MEDIA',
  };
}

/** The dissolve stands between its two clips. */
function transition({ dissolve }: EditCut, time: Times): Json[] {
  if (!dissolve) return [];
  return [
    {
      OTIO_SCHEMA: 'Transition.1',
      metadata: {},
      name: 'O.L',
      in_offset: time.at(dissolve.before),
      out_offset: time.at(dissolve.after),
      transition_type: 'SMPTE_Dissolve',
    },
  ];
}

/** What the format has no place for; frames as on the sheet, from 1. */
function about(solved: Handed): Json {
  const { shot, counts } = solved;
  return {
    cut: shot.cut,
    title: shot.title,
    scene: shot.scene,
    take: shot.take,
    artists: shot.artists,
    time: shot.time,
    length: shot.length,
    handles: { head: shot.handles.head, tail: shot.handles.tail },
    counts: { ...counts },
    fades: fades(solved).flatMap((fade) =>
      fade.kind === 'fade'
        ? [
            {
              way: fade.way,
              colour: fade.white ? 'white' : 'black',
              from: fade.frames.from,
              to: fade.frames.to,
            },
          ]
        : [],
    ),
    spoken: shot.spoken.map(({ kind, speaker, manner, frames: { from, to }, parts }) => ({
      kind,
      speaker,
      manner,
      from,
      to,
      text: parts.map(({ text }) => text.trim()).join(' '),
    })),
  };
}

type Fade = Extract<Light, { kind: 'fade' | 'wipe' | 'iris' }>;

/** They are in the finished picture, as the sheet orders them: told, so that nobody makes them a second time. */
function fades({ shot }: Handed): Fade[] {
  return shot.camera.light.flatMap((one) =>
    one.kind === 'fade' || one.kind === 'wipe' || one.kind === 'iris' ? [one] : [],
  );
}

function fadeName(fade: Fade): string {
  const { way } = fade;
  if (fade.kind === 'wipe') return `WIPE ${way.toUpperCase()} ${fade.towards.toUpperCase()}`;
  if (fade.kind === 'iris') return `IRIS ${way.toUpperCase()}`;
  const { white } = fade;
  return `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;
}

function fadeMarker(fade: Fade, time: Times): Json {
  const { from, to } = fade.frames;
  return marker(fadeName(fade), 'in the finished picture', time.range(from - 1, to - from + 1));
}

function notes({ shot }: Handed, time: Times): Json[] {
  return shot.notes.map(({ frame, text }) => marker('note', text, time.range(frame - 1, 1)));
}

function marker(name: string, comment: string, range: Json): Json {
  return { OTIO_SCHEMA: 'Marker.2', metadata: {}, name, color: 'GREEN', marked_range: range, comment };
}
