/** Wrong use of the program: of its command line, or of an option of a job. */

import type { Code, Messages } from '../language/catalogue/index.js';

/** What messages call the command line. */
export const COMMAND_LINE = 'command line';

/** Thrown where a call makes no sense; nothing has been written then. The command line shows it, and leaves with 2. */
export class UsageError<C extends Code = Code> extends Error {
  override readonly name = 'UsageError';

  /** `word`: the argument that is meant, as it was typed; null: what is missing stands at the end. `better`: what to write in its place. */
  constructor(
    readonly code: C,
    readonly word: string | null,
    readonly parameters: Messages[C],
    readonly better?: string,
  ) {
    super(code);
  }
}
