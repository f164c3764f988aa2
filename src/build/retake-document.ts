/** Retake notes as one printed document: a summary where there are many cuts, then the note of each cut that changed. */

import { subjectOf } from '../compare/camera-subject.js';
import { sentence, telling } from '../compare/change-wording.js';
import { earlierLevels, nowCalled, rowsOfChange } from '../compare/changed-rows.js';
import type { Change } from '../compare/compare-cuts.js';
import type { Document, Page } from '../sheet/display-list.js';
import type { PageLook } from '../sheet/page-look.js';
import { type RetakeChange, retakePages } from '../sheet/retakes/retake-note.js';
import { retakeSummaryPages, type SummaryRow } from '../sheet/retakes/retake-summary.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';
import { workTitle } from './cut-document.js';

/** What is written into every note. */
export interface RetakeOrder {
  /** What the earlier version is called. */
  readonly against: string;
  readonly askedBy: string;
  readonly reason: string;
}

/** The note of one cut, laid out: small, so that the cuts themselves are dropped. */
export interface LaidOutNote {
  readonly row: SummaryRow;
  readonly pages: readonly Page[];
}

export function layOutNote(
  was: SolvedShot,
  is: SolvedShot,
  all: readonly Change[],
  order: RetakeOrder,
  look: PageLook,
): LaidOutNote {
  const { places } = wordsOf(look.settings).retakes;
  const told = telling(is, look.settings.labels);
  const names = earlierLevels(all);
  const changes = all.map((change): RetakeChange => {
    const { place } = change;
    const found = rowsOfChange(was, is, change, all);
    return {
      text: sentence(change, told),
      place,
      rows: found?.rows ?? null,
      differs: found?.differs ?? [],
      camera: subjectOf(was, is, change, nowCalled(names)),
      earlierLevel: place?.kind === 'level' ? (names.get(place.level) ?? null) : null,
    };
  });
  const where = new Set(
    all.map(({ place }) =>
      place === null ? places.head : place.kind === 'level' ? place.level : places[place.kind],
    ),
  );
  const time = told.length(is.shot.time);
  return {
    row: {
      cut: is.shot.cut,
      title: is.shot.title,
      time: was.shot.time === is.shot.time ? time : `${told.length(was.shot.time)} → ${time}`,
      where: [...where].join(', '),
      changes: all.length,
    },
    pages: retakePages({ was, is, changes, ...order }, look),
  };
}

export interface NotesOf {
  readonly notes: readonly LaidOutNote[];
  /** Numbers of cuts that only one version has. */
  readonly added: readonly string[];
  readonly dropped: readonly string[];
  readonly against: string;
}

export function retakeDocument({ notes, added, dropped, against }: NotesOf, look: PageLook): Document {
  const { settings } = look;
  const words = wordsOf(settings).retakes;
  const work = workTitle(settings);
  const bare = (cut: string, where: string): SummaryRow => ({ cut, title: '', time: '', where, changes: 0 });
  const rows = [
    ...notes.map(({ row }) => row),
    ...added.map((cut) => bare(cut, words.newCut)),
    ...dropped.map((cut) => bare(cut, words.droppedCut)),
  ];
  const summary =
    rows.length > 1 || notes.length === 0 ? retakeSummaryPages({ work, against, rows }, look) : [];
  let page = summary.length;
  const bookmarks = notes.map(({ row, pages }) => {
    const first = page;
    page += pages.length;
    return { title: wordsOf(settings).documents.cut(row.cut), page: first, children: [] };
  });
  return {
    title: [work, words.note].filter(Boolean).join(' · '),
    author: '',
    language: settings.labels,
    pages: [...summary, ...notes.flatMap(({ pages }) => pages)],
    bookmarks: [
      ...(summary.length > 0 ? [{ title: words.summary, page: 0, children: [] }] : []),
      ...bookmarks,
    ],
    trueSize: false,
  };
}
