/** What fixes do, with their parameters. */

export interface Fixes {
  /** Writes a text where another one stands. */
  readonly write: { readonly written: string };
}
