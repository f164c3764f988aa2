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
  readonly 'fairing-speed': { readonly power: number };
  readonly 'safe-speeds': /** mm of the field. */ { readonly widthMm: number };
  readonly 'speed-limit': /** mm a frame. */ { readonly speed: number };
  readonly 'cut-here': { readonly cut: string };
  readonly 'neighbour-here': None;
  readonly 'own-key': { readonly key: string };
}

// ---- what fixes do, with their parameters

export interface Fixes {
  /** Writes a text where another one stands. */
  readonly write: { readonly written: string };
  readonly 'indent-line': None;
  readonly 'add-colon': None;
  readonly 'close-text': None;
  readonly 'close-group': None;
  readonly 'close-chart': None;
  readonly 'add-equals': None;
  readonly 'blank-instead': None;
  readonly 'leave-out': None;
  readonly 'write-as-length': None;
  readonly 'blanks-around-x': None;
  readonly 'to-left-edge': None;
  readonly 'quote-text': None;
  readonly 'leave-colon-out': None;
  readonly 'write-two-dots': None;
  readonly 'leave-blanks-out': None;
  readonly 'write-star': None;
  readonly 'add-no-frames': None;
  readonly 'write-nought': None;
  readonly 'blank-between': None;
  readonly 'write-small': None;
  readonly 'double-backslash': None;
  readonly 'leave-quick-out': None;
  /** Make a field so wide. */
  readonly 'place-field': { readonly field: string; readonly place: string };
  readonly 'size-field': { readonly field: string; readonly size: string };
  readonly 'write-plain': /** The same of something that is no piece of a text. */ {
    readonly written: string;
  };
  readonly 'write-each': { readonly written: readonly string[] };
  readonly 'write-frame-1': None;
  readonly 'take-out-here': None;
  readonly 'leave-number': None;
  readonly 'take-out': None;
  readonly 'end-on': { readonly time: string };
  readonly 'start-on': { readonly time: string };
  readonly 'put-on-stack': { readonly level: string };
  readonly 'repeat-until': None;
  readonly 'hold-until': None;
  readonly 'take-this-out': None;
  readonly 'show-backwards': None;
  readonly 'expose-for': { readonly frames: number };
  readonly 'name-drawings': /** The name of the first of so many. */ {
    readonly count: number;
    readonly name: string;
  };
  readonly 'pin-names': { readonly names: readonly string[] };
  readonly 'unpin-names': { readonly names: readonly string[] };
  readonly 'add-line': { readonly line: string };
  readonly 'turn-clockwise': None;
  /** Two statements become one. */
  readonly 'join-lines': None;
  readonly 'paint-on': { readonly size: string };
}
