/** The table of light on paper. A new kind is one entry. */

import type { Light } from '../../shot/camera/camera-model.js';
import { type CameraLabels, frameBounds, joined, levels, percent } from './shared-move-labels.js';

type LightOf<K extends Light['kind']> = Extract<Light, { kind: K }>;

const exposure = ({ from, to }: LightOf<'expose'>): string =>
  from === to ? percent(from) : `${percent(from)}→${percent(to)}`;
const fadeName = ({ white, way }: LightOf<'fade'>): string =>
  `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;

const lights: { readonly [K in Light['kind']]: CameraLabels<LightOf<K>> } = {
  fade: {
    ...frameBounds,
    sign: ({ way }) => ({ form: 'wedge', opens: way === 'in' }),
    names: (light) => [fadeName(light)],
    short: fadeName,
    memo: (light) => fadeName(light),
  },
  overlap: {
    ...frameBounds,
    sign: () => ({ form: 'cross' }),
    names: ({ way, length }, telling) => {
      const long = `O.L ${telling.length(length)}`;
      const cut = telling.neighbour(way);
      const named = (what: string) => (cut === null ? [] : [telling.words.overlap(what, way, cut)]);
      return [...named(long), ...named('O.L'), long, 'O.L'];
    },
    short: () => 'O.L',
    memo: ({ way, length }, telling) =>
      telling.words.overlap(`O.L ${telling.length(length)}`, way, telling.neighbour(way)),
  },
  expose: {
    ...frameBounds,
    sign: () => ({ form: 'box' }),
    names: (light, { words }) => [
      `${levels(light)} ${words.exposure} ${exposure(light)}`,
      `${levels(light)} ${exposure(light)}`,
      levels(light),
    ],
    short: (_, words) => words.exposure,
    memo: (light, { words }) => `${levels(light)} ${words.exposure} ${exposure(light)}`,
  },
  glow: {
    ...frameBounds,
    sign: () => ({ form: 'box' }),
    names: (light, { words }) => [`${levels(light)} ${words.glow}`, levels(light)],
    short: (_, words) => words.glow,
    memo: (light, { words }) => `${levels(light)} ${words.glow}`,
  },
  effect: {
    ...frameBounds,
    sign: () => ({ form: 'box' }),
    names: (light) => [joined(levels(light), light.text), light.text],
    short: (_, words) => words.effect,
    memo: (light) => joined(levels(light), light.text),
  },
};

/** The entry of a light, to be used with that light only. */
export const lightKind = (light: Light): CameraLabels<Light> =>
  lights[light.kind] as unknown as CameraLabels<Light>;
