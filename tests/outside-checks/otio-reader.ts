/**
 * OpenTimelineIO as its published documentation describes it, for the tests: the serialized schemas as a JSON Schema, and a player that
 * finds what a track shows on each frame. Sources: OpenTimelineIO documentation, "Serialized Data Schema" (the names and fields of
 * Timeline.1, Stack.1, Track.1, Clip.2, MissingReference.1, Transition.1, Marker.2, TimeRange.1, RationalTime.1) and "Timeline
 * Structure" (a transition lies over the cut between its neighbours and takes no time of the track; its in_offset reaches into the
 * clip before, its out_offset into the clip after, and each clip needs media for the part where it is not yet, or no longer, on its own).
 * Written down from memory of that documentation.
 */

import { Ajv } from 'ajv';

const object = (schema: string, fields: Record<string, unknown>) => ({
  type: 'object',
  additionalProperties: false,
  required: ['OTIO_SCHEMA', ...Object.keys(fields)],
  properties: { OTIO_SCHEMA: { const: schema }, ...fields },
});
const ref = (name: string) => ({ $ref: `#/$defs/${name}` });
const list = (items: unknown) => ({ type: 'array', items });
const text = { type: 'string' };
const any = { type: 'object' };
const item = {
  metadata: any,
  name: text,
  source_range: { anyOf: [{ type: 'null' }, ref('TimeRange')] },
  effects: list(any),
  markers: list(ref('Marker')),
  enabled: { type: 'boolean' },
};

const SCHEMA = {
  ...object('Timeline.1', {
    metadata: any,
    name: text,
    global_start_time: { anyOf: [{ type: 'null' }, ref('RationalTime')] },
    tracks: ref('Stack'),
  }),
  $defs: {
    RationalTime: object('RationalTime.1', {
      rate: { type: 'number', exclusiveMinimum: 0 },
      value: { type: 'number' },
    }),
    TimeRange: object('TimeRange.1', { duration: ref('RationalTime'), start_time: ref('RationalTime') }),
    Stack: object('Stack.1', { ...item, children: list(ref('Track')) }),
    Track: object('Track.1', {
      ...item,
      kind: { enum: ['Video', 'Audio'] },
      children: list({ anyOf: [ref('Clip'), ref('Transition')] }),
    }),
    Clip: object('Clip.2', {
      ...item,
      media_references: { type: 'object', additionalProperties: ref('MissingReference') },
      active_media_reference_key: text,
    }),
    MissingReference: object('MissingReference.1', {
      metadata: any,
      name: text,
      available_range: { anyOf: [{ type: 'null' }, ref('TimeRange')] },
      available_image_bounds: { type: 'null' },
    }),
    Transition: object('Transition.1', {
      metadata: any,
      name: text,
      in_offset: ref('RationalTime'),
      out_offset: ref('RationalTime'),
      transition_type: { enum: ['SMPTE_Dissolve', 'Custom_Transition'] },
    }),
    Marker: object('Marker.2', {
      metadata: any,
      name: text,
      color: {
        enum: 'PINK RED ORANGE YELLOW GREEN CYAN BLUE PURPLE MAGENTA BLACK WHITE'.split(' '),
      },
      marked_range: ref('TimeRange'),
      comment: text,
    }),
  },
};

interface Rational {
  readonly rate: number;
  readonly value: number;
}
interface Range {
  readonly duration: Rational;
  readonly start_time: Rational;
}
export interface OtioClip {
  readonly OTIO_SCHEMA: 'Clip.2';
  readonly name: string;
  readonly source_range: Range;
  readonly markers: readonly { name: string; comment: string; marked_range: Range }[];
  readonly metadata: { readonly cutwright: Record<string, unknown> };
  readonly media_references: Record<string, { readonly name: string; readonly available_range: Range }>;
  readonly active_media_reference_key: string;
}
interface OtioTransition {
  readonly OTIO_SCHEMA: 'Transition.1';
  readonly in_offset: Rational;
  readonly out_offset: Rational;
}
export interface Otio {
  readonly name: string;
  readonly global_start_time: Rational;
  readonly tracks: { readonly children: readonly { children: readonly (OtioClip | OtioTransition)[] }[] };
}

const validate = new Ajv({ allErrors: true }).compile<Otio>(SCHEMA);

/** Throws where the text is no timeline of the published shape. */
export function readOtio(json: string): Otio {
  const read: unknown = JSON.parse(json);
  if (!validate(read)) throw new Error(JSON.stringify(validate.errors?.slice(0, 5), null, 1));
  const rates = new Set([...json.matchAll(/"rate": ([\d.]+)/g)].map(([, rate]) => rate));
  if (rates.size > 1) throw new Error(`rates ${[...rates].join(' and ')} in one timeline`);
  return read;
}

export function clipsOf(timeline: Otio): OtioClip[] {
  return timeline.tracks.children[0]!.children.filter((one): one is OtioClip => one.OTIO_SCHEMA === 'Clip.2');
}

/** What the track shows on each frame: media and media frame, two of them in a transition. Throws where there is no media for it. */
export function playOtio(timeline: Otio): string[][] {
  const seen: string[][] = [];
  let record = 0;
  const { children } = timeline.tracks.children[0]!;
  children.forEach((clip, i) => {
    if (clip.OTIO_SCHEMA !== 'Clip.2') {
      const sides = [children[i - 1], children[i + 1]].map((one) => one?.OTIO_SCHEMA);
      if (sides.join() !== 'Clip.2,Clip.2') throw new Error('a transition without its two clips');
      return;
    }
    const reference = clip.media_references[clip.active_media_reference_key]!;
    const [before, after] = [children[i - 1], children[i + 1]];
    const lead = before?.OTIO_SCHEMA === 'Transition.1' ? before.in_offset.value : 0;
    const trail = after?.OTIO_SCHEMA === 'Transition.1' ? after.out_offset.value : 0;
    const { start_time: first, duration } = clip.source_range;
    const { start_time: media, duration: whole } = reference.available_range;
    for (let frame = -lead; frame < duration.value + trail; frame++) {
      const source = first.value + frame;
      if (source < media.value || source >= media.value + whole.value)
        throw new Error(`${clip.name} has no media for ${source}`);
      seen[record + frame] = [...(seen[record + frame] ?? []), `${reference.name} ${source}`];
    }
    record += duration.value;
  });
  return seen;
}
