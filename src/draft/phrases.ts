/** Cycles that stand in several places, made into phrases. */

/** More of them than this make no text clearer. */
const MOST_PHRASES = 6;

export interface Shared {
  /** `phrase` statements. */
  readonly phrases: readonly string[];
  /** Items of the levels that play one. */
  readonly items: ReadonlyMap<string, string>;
}

/** `texts`: the items of each level. What stands between the brackets of a group can be a phrase: it means the same by itself. */
export function sharePhrases(texts: ReadonlyMap<string, string>): Shared {
  const count = new Map<string, number>();
  for (const text of texts.values())
    for (const body of bodies(text)) count.set(body, (count.get(body) ?? 0) + 1);
  const chosen = [...count]
    .map(([body, times]) => ({ body, saved: (times - 1) * body.length - 'phrase cycle1 = '.length }))
    .filter(({ saved }) => saved > 0)
    .sort((a, b) => b.saved - a.saved || (a.body < b.body ? -1 : 1))
    .slice(0, MOST_PHRASES)
    .map(({ body }, i) => ({ body, name: `cycle${i + 1}` }));
  const items = new Map<string, string>();
  for (const [level, text] of texts) {
    const played = chosen.reduce((so, { body, name }) => so.replaceAll(`(${body})`, name), text);
    if (played !== text) items.set(level, played);
  }
  return { phrases: chosen.map(({ body, name }) => `phrase ${name} = ${body}`), items };
}

/** What stands between the outermost brackets. */
function bodies(text: string): string[] {
  return [...text.matchAll(/\(([^()]*)\)/g)].map(([, body]) => body!);
}
