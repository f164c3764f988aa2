import type { Entry } from '../src/language/catalogue/index.js';

/** The reference page of every message, written out of the catalogue. */
export function messagesPage(catalogue: Readonly<Record<string, Entry>>): string {
  const codes = Object.keys(catalogue).sort();
  return `# Messages

Written out of the catalogue; do not edit. \`cutwright explain CODE\` says the same. An error keeps a cut from printing, a warning
and a hint do not.

| code | | |
| --- | --- | --- |
${codes.map((code) => `| [${code}](#${code}) | ${catalogue[code]!.severity} | ${catalogue[code]!.title} |`).join('\n')}

${codes.map((code) => section(code, catalogue[code]!)).join('\n')}`;
}

function section(code: string, { severity, explanation, example }: Entry): string {
  const said = `## ${code}\n\n*${severity}* ${explanation}\n`;
  if (example.kind === 'situation')
    return said + situation('Faulty', example.failing) + situation('Mended', example.mended);
  const files = Object.entries(example.files ?? {})
    .map(([name, text]) => fence(`With \`${name}\`:`, text))
    .join('');
  return said + files + fence('Faulty:', example.failing) + fence('Mended:', example.mended);
}

/** A situation in words, or an excerpt of several lines. */
function situation(title: string, text: string): string {
  return text.includes('\n') ? fence(`${title}:`, text) : `\n${title}: ${text}\n`;
}

/** The fence is longer than any in the text. */
function fence(title: string, text: string): string {
  const longest = Math.max(2, ...(text.match(/`+/g) ?? []).map((one) => one.length));
  const ticks = '`'.repeat(longest + 1);
  return `\n${title}\n\n${ticks}\n${text.replace(/\n?$/, '\n')}${ticks}\n`;
}
