import { type Entry, entries } from './entry.js';

/** A cut of two seconds with these lines. */
const cut = (failing: string, mended: string): Entry['example'] => ({
  kind: 'text',
  failing: `cut 1\ntime 2+0\n${failing}\n`,
  mended: `cut 1\ntime 2+0\n${mended}\n`,
});

/** Camera, level moves and light. */
export const camera = entries({
  'unknown-field': {
    severity: 'error',
    title: 'a field that is not there',
    explanation:
      'A move or `fix` names a field that no `field` statement defines, here or in a used file. `full`, the standard field, is always there.',
    example: cut('field A 60%\nfix B', 'field A 60%\nfix A'),
  },
  'field-full': {
    severity: 'error',
    title: 'the standard field given another meaning',
    explanation: '`full` means the standard field in every cut, so no field of a cut can have that name.',
    example: cut('field full 60%\nfix full', 'field A 60%\nfix A'),
  },
  'field-measures': {
    severity: 'hint',
    title: 'fields in percent and in lines of the chart',
    explanation:
      'Some houses give field sizes in percent of the standard field, others in lines of the field chart: 8F is no 8 %. A cut that mixes both is easily misread.',
    example: cut('field A 60%\nfield B 8F\ntruck A@1 > B@24', 'field A 7F\nfield B 8F\ntruck A@1 > B@24'),
  },
  'level-repeated': {
    severity: 'warning',
    title: 'a level named twice in one list',
    explanation:
      'A move takes each of its levels once, however often it is named. Perhaps another level was meant.',
    example: cut('A: 1..\nB: 1..\nglow A,A 1..12', 'A: 1..\nB: 1..\nglow A,B 1..12'),
  },
  'option-misplaced': {
    severity: 'error',
    title: 'a word that has no meaning for this move',
    explanation:
      'Each kind of move has its own words: `carry` goes with pans and trucks, `loop` with pulls, `log` with trucks, `about` with trucks and turns of levels, `sideways` with shake and sway. Take the word out, or look whether another move was meant.',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 loop 300mm',
      'field A full at 10,0\npan full@1 > A@24',
    ),
  },
  'spacing-twice': {
    severity: 'error',
    title: 'a leg that is spread twice',
    explanation:
      'Ramps, a curve, graduations by hand or a fairing mark say how the way of a leg is spread; a leg has one of them.',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 ease 4 curve 0.4 0 0.6 1',
      'field A full at 10,0\npan full@1 > A@24 ease 4',
    ),
  },
  'fairing-misplaced': {
    severity: 'error',
    title: 'a fairing mark without a quick truck',
    explanation:
      'The fairing mark says where the cushion of a quick truck begins. Other moves gather and lose speed with `ease`.',
    example: cut(
      'field A 60%\ntruck full@1 > A@24 fair ア@10 60%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'quick-without-fairing': {
    severity: 'error',
    title: 'a quick truck without its fairing mark',
    explanation:
      'A quick truck does most of its way at one speed and then cushions to a stop. Nobody can shoot it without knowing on which frame the cushion begins, and how much of the way is done by then.',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'turn-sense': {
    severity: 'error',
    title: 'a turn that does not say which way',
    explanation:
      'From 0 to 90 degrees can be to the left or to the right: `cw` (clockwise) or `ccw` must be said.',
    example: cut('A: 1..\nturn level A 0@1 > 90@24', 'A: 1..\nturn level A 0@1 > 90@24 cw'),
  },
  'exposure-range': {
    severity: 'error',
    title: 'more light than all',
    explanation: 'An exposure is a share of the light, from 0 % to 100 %.',
    example: cut('A: 1..\nexpose A 120% 1..24', 'A: 1..\nexpose A 100% 1..24'),
  },
  'overlap-short': {
    severity: 'error',
    title: 'a dissolve of one frame',
    explanation:
      'A dissolve begins with one cut alone and ends with the other, so it needs two frames at least.',
    example: cut('A: 1..\noverlap out 1', 'A: 1..\noverlap out 12'),
  },
  'overlap-long': {
    severity: 'error',
    title: 'a dissolve longer than its sheet',
    explanation:
      'A dissolve runs over the last or the first rows of the sheet, and the sheet has fewer. Make the cut longer, or the dissolve shorter.',
    example: cut('A: 1..\noverlap out 5+0', 'A: 1..\noverlap out 1+0'),
  },
  'number-senseless': {
    severity: 'error',
    title: 'a number of the camera that cannot be',
    explanation:
      'A field without width, a level scaled to nothing, a sway that takes no time or a way of kilometres: nothing can be shot from such a number. It is most likely a slip of the hand.',
    example: cut('field A 0% at 10,0\nfix A', 'field A 60% at 10,0\nfix A'),
  },
  'size-vanishes': {
    severity: 'error',
    title: 'a size that shrinks to nothing',
    explanation:
      'A curve may swing past its end and come back. Here it swings so far that the field (or the level) has no size left on some frame. Choose a second number nearer to 1, or a larger field to end on.',
    example: cut(
      'field A 10%\ntruck full@1 > A@48 curve 0.3 0 0.6 3',
      'field A 10%\ntruck full@1 > A@48 curve 0.3 0 0.6 1',
    ),
  },
  'move-backwards': {
    severity: 'error',
    title: 'a leg that arrives before it leaves',
    explanation: 'The frames of a move run forwards, and a leg takes one frame at least.',
    example: cut('field A full at 40,0\npan full@24 > A@12', 'field A full at 40,0\npan full@12 > A@24'),
  },
  'move-past-end': {
    severity: 'error',
    title: 'a move past the end of the sheet',
    explanation:
      'The move (or fade, or exposure) ends on a frame that the sheet does not have, so nobody could shoot its end. After a retime give it new frames, or hang it on a mark.',
    example: cut('pull BG right 1mm/f 1..3+0', 'pull BG right 1mm/f 1..2+0'),
  },
  'moves-overlap': {
    severity: 'error',
    title: 'two moves of one thing at once',
    explanation:
      'The camera goes one way at a time, and so do the place, the scale, the turn and the sway of a level. Moves may follow each other: what stands on a frame with `@` leaves from there, and a range `a..b` takes its own frames. Only pulls of a level add up.',
    example: cut(
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@24\npan A@20 > B@48',
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@24\npan A@24 > B@48',
    ),
  },
  'move-jumps': {
    severity: 'error',
    title: 'a move that starts elsewhere',
    explanation:
      'Each move starts where the last one of its kind ended; else the picture would jump within the cut. Start it from the field, place, scale or turn that the thing has then.',
    example: cut(
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@12\npan B@24 > full@48',
      'field A full at 10,0\nfield B full at 20,0\npan full@1 > A@12\npan A@24 > B@48',
    ),
  },
  'quick-long': {
    severity: 'warning',
    title: 'a quick truck that takes long',
    explanation:
      'Quick trucks last around a second (common practice); one of more than two is an ordinary truck, or one of its frames is mistyped.',
    example: {
      kind: 'text',
      failing: 'cut 1\ntime 4+0\nfield A 60%\ntruck quick full@1 > A@4+0 fair ア@24 60%\n',
      mended: 'cut 1\ntime 4+0\nfield A 60%\ntruck quick full@1 > A@24 fair ア@10 60%\n',
    },
  },
  'ramps-long': {
    severity: 'error',
    title: 'ramps longer than the move',
    explanation:
      'The frames over which a move gathers speed and those over which it loses it must fit into its steps together: `A@1 > B@24` has 23 steps, the range 1..24 has 24.',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 ease 12 12',
      'field A full at 10,0\npan full@1 > A@24 ease 12 11',
    ),
  },
  'curve-range': {
    severity: 'error',
    title: 'a curve that leaves its range',
    explanation:
      'The first and third number of a curve are shares of the time and lie from 0 to 1, as CSS Easing has it; else the move would be in two places on one frame. The second and fourth are shares of the way and may swing past 0 and 1, as far as -10 and 10.',
    example: cut(
      'field A full at 10,0\npan full@1 > A@24 curve 1.2 0 0.6 1',
      'field A full at 10,0\npan full@1 > A@24 curve 0.9 0 0.6 1',
    ),
  },
  'steps-without-way': {
    severity: 'error',
    title: 'graduations on a move that goes no way',
    explanation:
      'Graduations in millimetres say how far something goes on each frame. A truck or a turn goes nowhere; give it ramps or a curve.',
    example: cut('field A 60%\ntruck full@1 > A@3 steps 10 10', 'field A 60%\ntruck full@1 > A@3 ease 1'),
  },
  'steps-count': {
    severity: 'error',
    title: 'more or fewer graduations than steps',
    explanation:
      'There is one graduation a step. From the frame on which the thing stands still to the frame on which it has arrived: `A@1 > B@5` has four steps, the range 1..4 as well.',
    example: cut(
      'field A full at 10,0\npan full@1 > A@5 steps 1 4 5',
      'field A full at 10,0\npan full@1 > A@5 steps 1 4 4 1',
    ),
  },
  'steps-sum': {
    severity: 'error',
    title: 'graduations that do not add up',
    explanation:
      'Graduations spaced by hand add up to the whole way, within a twentieth of a millimetre. Correct a graduation, or the place that the move goes to.',
    example: cut(
      'field A full at 10,0\npan full@1 > A@4 steps 1 4 4',
      'field A full at 10,0\npan full@1 > A@4 steps 2 4 4',
    ),
  },
  'fairing-share': {
    severity: 'error',
    title: 'a fairing mark with nothing or all done',
    explanation:
      'At the fairing mark some of the way is done and some is left: more than 0 % and less than 100 %.',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 100%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'fairing-outside': {
    severity: 'error',
    title: 'a fairing mark outside its move',
    explanation:
      'The cushion begins at the fairing mark, so the mark lies between the frames that the move leaves from and arrives on.',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@30 60%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'fairing-slow': {
    severity: 'error',
    title: 'a cushion that would speed up',
    explanation:
      'The cushion keeps the speed that the move has at the fairing mark and loses it evenly. If less is done at the mark than a move of one speed would have done by then, it would have to go faster afterwards. Put the mark earlier, or have more done there.',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@20 60%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@10 60%',
    ),
  },
  'cushion-short': {
    severity: 'warning',
    title: 'a cushion that stops early',
    explanation:
      'The speed at the fairing mark is so high for what is left that 99.5 % of the cushion is done before half of its frames. The rest looks like a stop. Have less done at the mark, or put the mark later, or end the move sooner.',
    example: cut(
      'field A 60%\ntruck quick full@1 > A@24 fair ア@6 85%',
      'field A 60%\ntruck quick full@1 > A@24 fair ア@6 55%',
    ),
  },
  'pan-sizes': {
    severity: 'error',
    title: 'a pan between fields of two sizes',
    explanation:
      'A pan keeps the size of the field. Where the size changes it is a truck, which is shot otherwise.',
    example: cut('field A 60%\npan full@1 > A@24', 'field A 60%\ntruck full@1 > A@24'),
  },
  'truck-one-size': {
    severity: 'error',
    title: 'a truck between fields of one size',
    explanation: 'A truck changes the size of the field. Where the size stays the camera only pans.',
    example: cut('field A full at 10,0\ntruck full@1 > A@24', 'field A full at 10,0\npan full@1 > A@24'),
  },
  'speed-jumps': {
    severity: 'hint',
    title: 'a jump of the speed at a field passed through',
    explanation:
      'Two legs of one move meet with different speeds or directions, and the eye sees the knee. Ramps on both legs make it a stop, or other frames make the speeds agree. The measure, a quarter of the faster speed, is our own.',
    example: cut(
      'field A full at 2,0\nfield B full at 40,0\npan full@1 > A@24 > B@48',
      'field A full at 20,0\nfield B full at 40.87,0\npan full@1 > A@24 > B@48',
    ),
  },
  'carried-level': {
    severity: 'error',
    title: 'a level fixed to the camera that should go with it',
    explanation:
      '`level B carry` fixes the level to the camera for the whole cut; a follow or a `carry` of one move would move it twice.',
    example: cut('B: 1..\nlevel B carry\nfollow B left 1mm/f 1..24', 'B: 1..\nfollow B left 1mm/f 1..24'),
  },
  'pulls-along': {
    severity: 'hint',
    title: 'two pulls at once along one line',
    explanation:
      'Pulls of a level add up. Along one line that is one pull at the sum of both speeds, which is easier to shoot.',
    example: cut('pull BG right 0.5mm/f 1..24\npull BG right 0.2mm/f 1..24', 'pull BG right 0.7mm/f 1..24'),
  },
  'sway-unrest': {
    severity: 'warning',
    title: 'a sway that ends away from rest',
    explanation:
      'After the last frame of a sway the level is at its place again. If the sway is not there by then the level jumps. End it after a whole number of half sways.',
    example: cut('A: 1..\nroll A 5mm 1..30 every 1+0', 'A: 1..\nroll A 5mm 1..36 every 1+0'),
  },
  'field-off-chart': {
    severity: 'warning',
    title: 'a field that leaves the field chart',
    explanation:
      'On a field chart the steps to the east or west and the lines of the field come to no more than the lines of the chart, and the same to the north and south. A field beyond that shows what lies outside the chart.',
    example: cut(
      'field A 8F at 5E\nfix A\nlevel BG size 400x210mm',
      'field A 8F at 3E\nfix A\nlevel BG size 400x210mm',
    ),
  },
  'scan-enlarged': {
    severity: 'hint',
    title: 'a field so small that the scan is enlarged',
    explanation:
      'The drawings are scanned at the resolution that the episode says (`scan`), and the finished picture has so many pixels (`output`). Below a certain field the scan has fewer pixels than the picture, and lines grow soft. Scan finer, or draw larger.',
    example: cut('field A 60%\nfix A', 'field A 98%\nfix A'),
  },
  strobing: {
    severity: 'warning',
    title: 'a speed that strobes',
    explanation:
      'Between 1/120 and 1/48 of the field’s width a frame a passing picture probably strobes: over 0.1 in on a 12 in field, and safe again as a zip pan from 0.25 in (a rule of drawn animation attributed to T. White). In a truck the slowest point of the picture counts. Go slower or faster, or blur.',
    example: cut(
      'level BG size 400x142.875mm at -73,0\npull BG right 3mm/f 1..2+0',
      'level BG size 400x142.875mm at -73,0\npull BG right 1mm/f 1..2+0',
    ),
  },
  judder: {
    severity: 'hint',
    title: 'a full width in less than seven seconds',
    explanation:
      'A picture that passes a whole width of the field in less than seven seconds can judder (a camera maker’s panning guide). It is a matter of taste and of what is seen, so it is a hint only.',
    example: cut(
      'level BG size 400x142.875mm at -73,0\npull BG right 2mm/f 1..2+0',
      'level BG size 400x142.875mm at -73,0\npull BG right 1mm/f 1..2+0',
    ),
  },
  'artwork-edge': {
    severity: 'warning',
    title: 'an edge of the artwork comes into the picture',
    explanation:
      'On some frame the camera sees past the edge of the paper. The message says from when on, by how much, and the smallest artwork that would do. A level whose edges may show, a cut-out for example, is marked `free`.',
    example: cut(
      'level BG size 300x150mm\nfield A full at 60,0\npan full@1 > A@2+0',
      'level BG size 380x150mm at 30,0\nfield A full at 60,0\npan full@1 > A@2+0',
    ),
  },
  'artwork-long': {
    severity: 'warning',
    title: 'artwork of more than five metres',
    explanation:
      'The moves need artwork longer than anyone paints in one piece (five metres is our own measure). Paint it as a loop, or look for a mistyped speed.',
    example: cut('pull BG right 300mm/f 1..2+0', 'pull BG right 300mm/f 1..2+0 loop 600mm'),
  },
  'loop-short': {
    severity: 'warning',
    title: 'a loop too short',
    explanation:
      'A loop is at least as long as what the field takes of it, or the same drawing is seen twice at once; and its artwork is at least as long as the loop, or there are gaps.',
    example: cut('pull BG right 1mm/f 1..2+0 loop 200mm', 'pull BG right 1mm/f 1..2+0 loop 300mm'),
  },
  'loop-askew': {
    severity: 'error',
    title: 'a loop pulled askew',
    explanation:
      'A loop repeats along the length or the height of its artwork, so it can only be pulled along one of them.',
    example: cut('pull BG 30deg 1mm/f 1..2+0 loop 300mm', 'pull BG right 1mm/f 1..2+0 loop 300mm'),
  },
  'loop-two': {
    severity: 'error',
    title: 'two loops of one level',
    explanation: 'A level is painted once. All its pulls speak of the same loop, or of none.',
    example: cut(
      'pull BG right 1mm/f 1..24 loop 300mm\npull BG right 2mm/f 25..48 loop 400mm',
      'pull BG right 1mm/f 1..24 loop 300mm\npull BG right 2mm/f 25..48 loop 300mm',
    ),
  },
  'fade-short': {
    severity: 'error',
    title: 'a fade of one frame',
    explanation: 'A fade shows nothing on its first frame and all on its last, so it needs two at least.',
    example: cut('fade in 1..1', 'fade in 1..12'),
  },
  'light-overlaps': {
    severity: 'error',
    title: 'two fades or exposures at once',
    explanation:
      'Fades and dissolves say how much of the whole picture is seen, so only one of them can run at a time; the same holds for exposures of one level.',
    example: cut('fade in 1..24\nfade out 20..48', 'fade in 1..24\nfade out 25..48'),
  },
  flashes: {
    severity: 'warning',
    title: 'light that flashes more than three times in a second',
    explanation:
      'More than three flashes in any second can bring on seizures in people with photosensitive epilepsy (WCAG 2.3.1, ITU-R BT.1702). Counted are white fades, light through and the appearing of levels marked as flashing. It is a count and no measurement of brightness, area or colour: the test of the broadcaster decides.',
    example: cut(
      'glow A 1..2\nglow A 5..6\nglow A 9..10\nglow A 13..14\nA: 1..',
      'glow A 1..2\nglow A 13..14\nA: 1..',
    ),
  },
});
