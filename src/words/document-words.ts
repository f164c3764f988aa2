/** Titles and bookmarks of the PDF, and headings of a retake note. */
export interface DocumentWords {
  /** The parts of a cut, in the outline. */
  readonly parts: {
    readonly sheet: string;
    readonly charts: string;
    readonly camera: string;
    readonly table: string;
    readonly strip: string;
    readonly overlay: string;
  };
  readonly blankForms: string;
  /** In place of a list of changes, where the cut was not there yet. */
  readonly newCut: string;
  cut(name: string): string;
  /** Over the changes of a cut in a retake note. */
  noteCut(name: string): string;
  /** Cuts that only one version has: `version` names it, null is the present one. */
  onlyIn(version: string | null, cuts: string, count: number): string;
}
