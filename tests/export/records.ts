/** Records of a CSV text, read by the grammar of RFC 4180, section 2. Throws on what it does not allow. */
export function records(text: string): string[][] {
  const found: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    const field = /"((?:[^"]|"")*)"|([^",\r\n]*)/y;
    field.lastIndex = at;
    const [whole, quoted, plain] = field.exec(text)!;
    row.push(quoted?.replaceAll('""', '"') ?? plain!);
    at += whole.length;
    if (text[at] === ',') at += 1;
    else if (text.startsWith('\r\n', at)) {
      found.push(row);
      row = [];
      at += 2;
    } else throw new Error(`neither a comma nor the end of a record at ${at}`);
  }
  return found;
}
