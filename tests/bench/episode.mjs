/** An episode for measuring: cuts of three to twelve seconds, two to six levels, with what sheets usually hold. */

/** The same numbers in every run (a linear congruential generator, Numerical Recipes' constants). */
function dice(seed) {
  let state = seed >>> 0;
  return (sides) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * sides);
  };
}

const LEVELS = ['A', 'B', 'C', 'D', 'E', 'F'];

/** The text of cut `number`; with `camera`, every third has a pan or a truck and a pull. */
export function cut(number, { camera = false } = {}) {
  const roll = dice(number);
  const seconds = 3 + roll(10);
  const levels = LEVELS.slice(0, 2 + roll(5));
  const timelines = levels.map((level) => {
    const items = [];
    let key = 1;
    for (let frames = 0; frames < seconds * 24 - 60; ) {
      const between = 1 + roll(3);
      const hold = 6 + roll(12);
      items.push(`${key}:${hold} ${key}${'-'.repeat(between)}${key + 1}`);
      frames += hold + 2 * (between + 2);
      key += 2;
    }
    return roll(3) === 0 ? `${level}: (1--2--3--)..` : `${level}: ${items.join(' ')} ${key}..`;
  });
  return [
    `cut ${number} "Cut for measuring ${number}"`,
    `time ${seconds}+0`,
    `artist "Bench ${1 + roll(4)}"`,
    `memo "Wind from screen left. 夕方の光。"`,
    `stack BG ${levels.join(' ')}`,
    ...timelines,
    `voice "Nao" 1+6..2+20 "Wait for me!"`,
    `sound 2+1..2+20 "door slams"`,
    ...(camera && number % 3 === 0 ? moves(number, seconds, levels) : []),
    '',
  ].join('\n');
}

function moves(number, seconds, levels) {
  const free = levels.map((level) => `level ${level} free`);
  if (number % 2 === 0) {
    return [
      ...free,
      'level BG size 400x160mm at 45,0',
      'field A full',
      'field B full at 90,0',
      `pan A@13 > B@${seconds}+0 ease 12 18 ticks carry A`,
    ];
  }
  return [
    ...free,
    'level BG size 500x200mm at -100,0',
    'field A full',
    'field B 80% at 10,5',
    `truck A@1 > B@${seconds}+0 ease 12`,
    `pull BG right 0.5mm/f 1..${seconds}+0`,
  ];
}

export const MANIFEST = 'title: Measured\nepisode: 1\ncuts: ["*.cut"]\n';
