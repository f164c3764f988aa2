/** The languages that sheets, lists and notes are printed in; the first is the default. */
export const LABELS = ['en', 'ja'] as const;
export type LabelLanguage = (typeof LABELS)[number];
