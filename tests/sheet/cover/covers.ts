/** Cuts and their production for tests of covers. */

import type { CutProduction } from '../../../src/sheet/page-look.js';

export const CUT = `cut 12A "Along the sea wall"
time 5+12
scene 6
take 2
artist "H. Tarn"
memo "Rests on both ends."
stack BG A B
A "Pim": 1--2-3 4..
B "scarf": (1-=-2)..
`;

/** So many levels, each with two keys and two in-betweens. */
export const crowded = (levels: number): string =>
  `cut 7 "${'A crowd that goes by '.repeat(4)}"\ntime 5+0\n${Array.from({ length: levels }, (_, i) => `L${i + 1} "walker number ${i + 1} of the crowd": 1--2..`).join('\n')}\n`;

export const PRODUCTION: CutProduction = {
  stages: [
    { stage: 'layout', state: 'done', date: '2027-03-06', person: 'H. Tarn', due: '2027-03-12' },
    { stage: 'key', state: 'retake', date: '2027-03-26', person: 'K. Brandt', due: '2027-04-02' },
    { stage: 'check', state: 'started', date: '2027-03-26', person: '', due: null },
    { stage: 'in-between', state: 'open', date: '', person: '', due: '2027-04-30' },
    { stage: 'colour', state: 'open', date: '', person: '', due: null },
  ],
  retakes: [{ stage: 'key', date: '2027-03-26', person: 'K. Brandt', note: 'too early' }],
};

export function retakes(count: number): CutProduction['retakes'] {
  return Array.from({ length: count }, (_, i) => ({
    stage: 'in-between',
    date: `2027-04-${String(i + 1).padStart(2, '0')}`,
    person: 'Konstantin Brandt-Marlowe',
    note: `the ${i + 1}th time that the lantern of the second man swings the wrong way from row 3 on`,
  }));
}
