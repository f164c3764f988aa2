import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { loadMessages, messageOf } from '../../../../src/language/message.js';

await loadMessages('ja');

/** The Japanese sentence of a message. */
export const saidInJapanese = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'ja');
