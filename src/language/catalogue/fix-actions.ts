/** What fixes do, with their parameters. */

import type { None } from './catalogue-entry.js';

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
  readonly 'write-plain': /** The same of something that is no piece of a text. */ {
    readonly written: string;
  };
  readonly 'write-each': { readonly written: readonly string[] };
  readonly 'write-frame-1': None;
  readonly 'take-out-here': None;
  readonly 'leave-number': None;
  readonly 'take-out': None;
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
  readonly 'paint-on': { readonly size: string };
}
