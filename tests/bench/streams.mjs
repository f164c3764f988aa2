import { inflateSync } from 'node:zlib';

/** The content streams of pages and forms in a file, uncompressed: those that are text, which fonts are not. */
export function contents(pdf) {
  const found = [];
  for (let at = pdf.indexOf('stream\n'); at >= 0; at = pdf.indexOf('stream\n', at + 1)) {
    if (pdf.toString('latin1', at - 3, at) === 'end') continue;
    const head = pdf.toString('latin1', Math.max(0, at - 400), at);
    const length = Number(head.slice(head.lastIndexOf(' obj')).match(/\/Length (\d+)/)[1]);
    const start = at + 'stream\n'.length;
    const stream = inflateSync(pdf.subarray(start, start + length));
    if (/^[\d.]+ 0 0 -|^[\d. ]+ (rg|RG|g|G|re|w)\n/.test(stream.toString('latin1', 0, 80)))
      found.push(stream);
    at = start + length;
  }
  return found;
}
