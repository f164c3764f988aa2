/** The languages that sheets, lists and notes are printed in; the first is the default. */
export const LABELS = ['en', 'ja'] as const;
export type LabelLanguage = (typeof LABELS)[number];

/** What a level shows that is the mouth of a speaker, as the title of its column. Not among the words of sheets, which take long to load. */
export const MOUTH_TITLES: Readonly<Record<LabelLanguage, (speaker: string) => string>> = {
  en: (speaker) => `${speaker}, mouth`,
  ja: (speaker) => `${speaker}・口`,
};
