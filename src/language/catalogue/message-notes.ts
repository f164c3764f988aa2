/** The further remarks of diagnostics, with their parameters. */

import type { None } from './catalogue-entry.js';
import type { Neighbour } from './message-terms.js';

export interface Notes {
  /** Where something stands that the message speaks of. */
  readonly 'stands-here': None;
  readonly 'written-so': { readonly example: string };
  readonly 'timeline-colon': { readonly example: string };
  readonly 'first-here': None;
  readonly 'stack-here': None;
  readonly 'stands-first-here': None;
  readonly 'phrase-here': { readonly phrase: string };
  readonly 'item-before': None;
  readonly 'pinned-here': None;
  readonly 'other-chart': None;
  readonly 'new-name': None;
  readonly 'dropped-name': None;
  readonly 'count-here': { readonly inbetweens: number };
  readonly 'pinned-even': { readonly inbetweens: number };
  readonly 'drawn-for': { readonly drawings: number; readonly cut: string };
  readonly 'overlaps-here': { readonly cut: string };
  readonly 'neighbour-stands': { readonly neighbour: Neighbour; readonly way: 'in' | 'out' };
  readonly 'says-here': { readonly neighbour: Neighbour };
  readonly 'manifest-keys': { readonly keys: readonly string[] };
  readonly 'stands-already': None;
  readonly takes: { readonly words: readonly string[] };
  readonly 'other-one-here': None;
  readonly 'spread-here': None;
  readonly 'other-one': None;
  readonly 'other-pull': None;
  readonly 'move-ends-there': None;
  readonly 'camera-rests-there': None;
  readonly 'slide-before': None;
  readonly 'even-speed': None;
  readonly 'flashes-counted': None;
  readonly 'named-here': { readonly level: string };
  readonly artwork: {
    readonly level: string;
    readonly width: number;
    readonly height: number;
    readonly x: number;
    readonly y: number;
  };
  readonly 'enough-dpi': { readonly dpi: number };
  readonly 'cushion-speed': { readonly power: number };
  readonly 'safe-speeds': /** mm of the field. */ { readonly widthMm: number };
  readonly 'speed-limit': /** mm a frame. */ { readonly speed: number };
  readonly 'cut-here': { readonly cut: string };
  readonly 'neighbour-here': None;
  readonly 'own-key': { readonly key: string };
}
