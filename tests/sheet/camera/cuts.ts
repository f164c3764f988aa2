/** Cuts whose cameras strain the column, each in its way. */

const HEAD = `stack BG A B C BOOK1
field A full
field B full at 120,10
field C 60% at 120,10
A: 1--2-3..
B: 1..
C: 1-2-3..
`;

export const PAN = `cut 12 "Ferry leaves"
time 8+0
${HEAD}pan A@1+1 > B@7+0 ease 12 graduated carry A
`;

export const CAMERAS: Readonly<Record<string, string>> = {
  'a graduated pan over a page': PAN,
  'a pan that ends on the last row': `cut 1\ntime 1+0\n${HEAD}pan A@1 > B@24\n`,
  'four lanes': `cut 12 "Ferry leaves"
time 8+0
${HEAD}pan A@1+1 > B@5+0 ease 12 graduated carry A
truck B@5+0 > C@7+0
pull BOOK1 left 3mm/f 1+1..6+0
slide B ア(0,0)@1+1 > イ(40,0)@3+0 > エ(-120,0)@6+0
fade in 1..24
fade out white 7+1..8+0
shake 4mm>0mm 7+1..7+20
voice "Nao" 1+6..2+20 "Wait for me!"
`,
  'all kinds of moves and light': `cut 13 "Lamp"
time 9+0
${HEAD}overlap in 24
overlap out 1+0
truck quick A@2+1 > C@3+0 fair ア@2+6 85%
truck C@3+0 > A@6+0 log
follow A left 1mm/f 6+2..7+0
pull BG left 150mm 1..7+0 ease 12 graduated
pull BOOK1 right 600mm 1..7+0 loop 300mm
sway A 5mm 1+1..4+0 every 1+12
truck level B 100%@1 > 140%@3+0 about 10,20
turn level C 0@1 > 360@2+0 cw about 0,0
expose B 50% 4+1..5+0
glow C 5+1..6+0
effect "heat haze over the whole of the quay" A,B 6+1..8+0
shake 4mm>0mm 7+1..7+20
note 8+1 "last lantern"
`,
  'short moves': `cut 3
time 1+0
${HEAD}fade in 1..2
pan A@3 > B@4
pan B@4 > A@6
pull BG left 2mm 5..5
glow C 7..7
effect "sparks" B 8..8
truck level B 100%@8 > 90%@9
turn level C 0@2 > 720@3 ccw
fade out white 23..24
`,
  'more lanes than there is room for': `cut 4
time 7+0
stack BG ${Array.from({ length: 14 }, (_, i) => `L${i}`).join(' ')}
${Array.from({ length: 14 }, (_, i) => `L${i}: 1..`).join('\n')}
${Array.from({ length: 14 }, (_, i) => `pull L${i} left ${i + 1}mm/f ${i + 1}..7+0 graduated`).join('\n')}
`,
};
