/**
 * The types of the texts in one language. What a text says is in its parameters, which are the same for all languages: a second
 * language is a second table of type `Language`.
 */

import type { Fixes } from './fix-actions.js';
import type { Code, Message, Messages } from './index.js';
import type { Notes } from './message-notes.js';

/** A text made of parameters; `sentence` makes the one of a message among them. */
type Written<P> = (parameters: P, sentence: (message: Message) => string) => string;

/** A text made of parameters; where they come in variants, one a variant. */
export type MessageText<P> = [P] extends [{ readonly variant: string }]
  ? { readonly [V in P['variant']]: Written<Extract<P, { readonly variant: V }>> }
  : Written<P>;

/** What a language says of a code. */
export interface CodeTexts<P> {
  /** A few words, for the index of the reference. */
  readonly title: string;
  /** Two or three sentences for the person who got the message: what it means, why it matters, what to do. */
  readonly explanation: string;
  /** The sentence of one diagnostic, in trade words. */
  readonly message: MessageText<P>;
}

export type Texts<P> = { readonly [C in keyof P]: CodeTexts<P[C]> };
export type ShortTexts<P> = { readonly [N in keyof P]: MessageText<P[N]> };

/** All texts of one language. */
export interface Language {
  readonly codes: { readonly [C in Code]: CodeTexts<Messages[C]> };
  /** Further remarks: a subordinate sentence without a full stop, or a sentence with one. */
  readonly notes: ShortTexts<Notes>;
  /** What a fix does, after "try:". */
  readonly fixes: ShortTexts<Fixes>;
}
