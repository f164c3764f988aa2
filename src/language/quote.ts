/** A text as the language quotes it: quotes, backslashes and line breaks escaped. */
export function quote(text: string): string {
  return `"${text.replace(/[\\"]/g, '\\$&').replace(/\n/g, '\\n')}"`;
}
