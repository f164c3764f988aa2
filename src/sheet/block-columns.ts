/** How the width of a block of rows is shared out between its columns. */

export interface BlockColumn {
  readonly x: number;
  readonly width: number;
}

/** The columns of one block, left to right. Key columns of levels come first among `keys`, spare ones after; so in `cels`. */
export interface BlockColumns {
  /** Second (foot) and running frame number. */
  readonly labels: BlockColumn;
  /** The row's number within its second (foot). */
  readonly numbers: BlockColumn;
  readonly keys: readonly BlockColumn[];
  /** Null on the further sides of a page. */
  readonly dialogue: BlockColumn | null;
  /** The same numbers again, beside the finished cels. */
  readonly numbersAgain: BlockColumn;
  readonly cels: readonly BlockColumn[];
  readonly camera: BlockColumn | null;
  readonly notes: BlockColumn;
}

/** Room at the left of each column of a group for change bars, mm; 0 where none stands there. */
export interface Gutters {
  readonly levels: number;
  readonly speech: number;
  readonly camera: number;
  readonly notes: number;
}

export const NO_GUTTERS: Gutters = { levels: 0, speech: 0, camera: 0, notes: 0 };

/** What is left of a column beside its gutter. */
export const besideGutter = ({ x, width }: BlockColumn, gutterMm: number): BlockColumn => ({
  x: x + gutterMm,
  width: width - gutterMm,
});

export interface WantedColumns {
  readonly levels: number;
  /** What the numbers and names of a level need at least, mm; spare columns may be narrower. */
  readonly levelMm: number;
  /** What the running numbers need at least, mm. */
  readonly labelsMm: number;
  /** The first side of a page, with dialogue and camera; the others have levels only. */
  readonly main: boolean;
  /** Room beside a key drawing's number for brackets about cycles, mm. */
  readonly bracketMm: number;
  /** Lines of dialogue that are spoken at the same time, at least 1. */
  readonly voices: number;
  /** Sounds and musics that are heard at the same time. */
  readonly sounds: number;
  /** Lanes of camera moves that run at the same time, at least 1. */
  readonly cameraLanes: number;
  readonly gutters: Gutters;
}

/** A level's column is never narrower, mm. */
export const NARROWEST_COLUMN = 3;

interface Share {
  readonly least: number;
  readonly wish: number;
  readonly most: number;
  /** Of what is left when all wishes are met. */
  readonly weight: number;
}

const LABELS: Share = { least: 4, wish: 4.4, most: 5.4, weight: 0.2 };
const NUMBERS: Share = { least: 2.8, wish: 3.2, most: 4.2, weight: 0.2 };

interface Shares {
  readonly labels: Share;
  readonly dialogue: Share;
  readonly camera: Share;
  readonly notes: Share;
  readonly key: Share;
  readonly cel: Share;
  /** Of the columns that stay empty. */
  readonly spareKey: Share;
  readonly spareCel: Share;
}

/** No less than so many millimetres. */
const atLeast = (share: Share, mm: number): Share => ({
  ...share,
  least: Math.max(share.least, mm),
  wish: Math.max(share.wish, mm),
  most: Math.max(share.most, mm),
});

function shares(wanted: WantedColumns): Shares {
  const { voices, sounds, cameraLanes: lanes, gutters } = wanted;
  const wider = (share: Share, mm: number): Share => ({
    ...share,
    least: share.least + mm,
    wish: share.wish + mm,
    most: share.most + mm,
  });
  const spare: Share = { least: NARROWEST_COLUMN, wish: 4, most: 7.5, weight: 0.5 };
  const cel = atLeast(spare, wanted.levelMm);
  return {
    dialogue: wider(
      {
        least: 7 * voices + 3.2 * sounds,
        wish: 9.5 * voices + 3.2 * sounds,
        most: 18 * voices + 6 * sounds,
        weight: 2,
      },
      gutters.speech,
    ),
    camera: wider(
      { least: 8 + 3 * lanes, wish: 11 + 3.5 * lanes, most: 30 + 6 * lanes, weight: 3 },
      gutters.camera,
    ),
    notes: wider({ least: 10, wish: 14, most: 70, weight: 5 }, gutters.notes),
    labels: atLeast(LABELS, wanted.labelsMm),
    key: wider(cel, wanted.bracketMm + gutters.levels),
    cel: wider(cel, gutters.levels),
    spareKey: wider(spare, wanted.bracketMm),
    spareCel: spare,
  };
}

/** Columns that stay empty: for a key added later, and for the animation checker. */
interface Spare {
  readonly keys: number;
  readonly cels: number;
}

/** `by`: the shares of what is wanted. */
function totalWidth(
  by: Shares,
  { levels, main }: Pick<WantedColumns, 'levels' | 'main'>,
  spare: Spare,
  bound: 'least' | 'wish',
): number {
  return (
    by.labels[bound] +
    2 * NUMBERS[bound] +
    by.notes[bound] +
    (main ? by.dialogue[bound] + by.camera[bound] : 0) +
    levels * (by.key[bound] + by.cel[bound]) +
    spare.keys * by.spareKey[bound] +
    spare.cels * by.spareCel[bound]
  );
}

const leastWidth = (wanted: WantedColumns, spare: Spare): number =>
  totalWidth(shares(wanted), wanted, spare, 'least');

/** Levels that fit side by side at the narrowest, with one empty cel column. */
export function mostLevels(asked: Omit<WantedColumns, 'levels'>, widthMm: number): number {
  let levels = 1;
  const by = shares({ ...asked, levels });
  const fits = (count: number): boolean =>
    totalWidth(by, { levels: count, main: asked.main }, { keys: 0, cels: 1 }, 'least') <= widthMm;
  while (fits(levels + 1)) levels++;
  return levels;
}

/** As many of the lanes asked for as fit beside one level, at least 1. */
export function mostCameraLanes(wanted: Omit<WantedColumns, 'levels' | 'main'>, widthMm: number): number {
  const alone = (cameraLanes: number): WantedColumns => ({ ...wanted, cameraLanes, levels: 1, main: true });
  let lanes = Math.max(1, wanted.cameraLanes);
  while (lanes > 1 && leastWidth(alone(lanes), { keys: 0, cels: 1 }) > widthMm) lanes--;
  return lanes;
}

/** The usual number of columns of a form, so that most cuts share one. */
const USUAL = { keys: 4, cels: 6 };

function spareColumns(by: Shares, wanted: WantedColumns, widthMm: number): Spare {
  const comfortable = (spare: Spare): boolean => {
    const least = totalWidth(by, wanted, spare, 'least');
    return least + (totalWidth(by, wanted, spare, 'wish') - least) * 0.6 <= widthMm;
  };
  const most = {
    keys: Math.max(USUAL.keys - wanted.levels, 1),
    cels: Math.max(USUAL.cels - wanted.levels, 2),
  };
  for (let cels = most.cels; cels > 1; cels--) {
    const keys = Math.max(0, Math.min(most.keys, cels - 1));
    if (comfortable({ keys, cels })) return { keys, cels };
  }
  return { keys: 0, cels: 1 };
}

export function blockColumns(wanted: WantedColumns, x: number, widthMm: number): BlockColumns {
  const by = shares(wanted);
  const { labels, dialogue, camera, notes, key, cel, spareKey, spareCel } = by;
  const spare = spareColumns(by, wanted, widthMm);
  const keys = wanted.levels + spare.keys;
  const cels = wanted.levels + spare.cels;
  const all: Share[] = [
    labels,
    NUMBERS,
    ...Array<Share>(wanted.levels).fill(key),
    ...Array<Share>(spare.keys).fill(spareKey),
    ...(wanted.main ? [dialogue] : []),
    NUMBERS,
    ...Array<Share>(wanted.levels).fill(cel),
    ...Array<Share>(spare.cels).fill(spareCel),
    ...(wanted.main ? [camera] : []),
    notes,
  ];
  const widths = shareOut(all, widthMm);
  let at = x;
  const placed = widths.map((width): BlockColumn => {
    const column = { x: at, width };
    at += width;
    return column;
  });
  const next = placed[Symbol.iterator]();
  const take = (): BlockColumn => next.next().value!;
  const several = (count: number): BlockColumn[] => Array.from({ length: count }, take);
  return {
    labels: take(),
    numbers: take(),
    keys: several(keys),
    dialogue: wanted.main ? take() : null,
    numbersAgain: take(),
    cels: several(cels),
    camera: wanted.main ? take() : null,
    notes: take(),
  };
}

/** Widths that add up to `total`: the least first, then all towards their wishes alike, then by weight up to the most. */
function shareOut(all: readonly Share[], total: number): number[] {
  const sum = (pick: (share: Share) => number): number => all.reduce((so, share) => so + pick(share), 0);
  const least = sum((share) => share.least);
  const towards = Math.max(0, Math.min(1, (total - least) / (sum((share) => share.wish) - least)));
  const widths = all.map((share) => share.least + (share.wish - share.least) * towards);
  let left = total - widths.reduce((so, width) => so + width, 0);
  while (left > 1e-6) {
    const growing = all.map((share, i) => (widths[i]! < share.most - 1e-9 ? share.weight : 0));
    const weight = growing.reduce((so, one) => so + one, 0);
    if (weight === 0) {
      widths[widths.length - 1]! += left;
      break;
    }
    const each = left / weight;
    growing.forEach((one, i) => {
      const more = Math.min(one * each, all[i]!.most - widths[i]!);
      widths[i]! += more;
      left -= more;
    });
  }
  return widths;
}
