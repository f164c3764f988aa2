/** Words of the trade that are others on a western form: it calls a cut a scene, and a scene a sequence. Common practice. */
export interface EnglishTerms {
  readonly cut: string;
  /** Before a number: `c12`. */
  readonly cutShort: string;
  readonly scene: string;
  readonly sceneShort: string;
}

export const JAPAN_TERMS: EnglishTerms = { cut: 'cut', cutShort: 'c', scene: 'scene', sceneShort: 'sc. ' };
export const WEST_TERMS: EnglishTerms = {
  cut: 'scene',
  cutShort: 'sc. ',
  scene: 'sequence',
  sceneShort: 'seq. ',
};

/** At the beginning of a title. */
export const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
