import type { CameraMessages } from '../camera-codes.js';
import { asGiven, type Texts } from '../texts.js';

export const camera: Texts<CameraMessages> = {
  'unknown-field': {
    title: 'a field that is not there',
    explanation:
      'A move or `fix` names a field that no `field` statement defines, here or in a used file. `full`, the standard field, is always there.',
    message: asGiven,
  },
  'field-full': {
    title: 'the standard field given another meaning',
    explanation: '`full` means the standard field in every cut, so no field of a cut can have that name.',
    message: asGiven,
  },
  'field-measures': {
    title: 'fields in percent and in lines of the chart',
    explanation:
      'Some houses give field sizes in percent of the standard field, others in lines of the field chart: 8F is no 8 %. A cut that mixes both is easily misread.',
    message: asGiven,
  },
  'level-repeated': {
    title: 'a level named twice in one list',
    explanation:
      'A move takes each of its levels once, however often it is named. Perhaps another level was meant.',
    message: asGiven,
  },
  'option-misplaced': {
    title: 'a word that has no meaning for this move',
    explanation:
      'Each kind of move has its own words: `carry` goes with pans and trucks, `loop` with pulls, `log` with trucks, `about` with trucks and turns of levels, `sideways` with shake and sway. Take the word out, or look whether another move was meant.',
    message: asGiven,
  },
  'spacing-twice': {
    title: 'a leg that is spread twice',
    explanation:
      'Ramps, a curve, graduations by hand or a fairing mark say how the way of a leg is spread; a leg has one of them.',
    message: asGiven,
  },
  'fairing-misplaced': {
    title: 'a fairing mark without a quick truck',
    explanation:
      'The fairing mark says where the cushion of a quick truck begins. Other moves gather and lose speed with `ease`.',
    message: asGiven,
  },
  'quick-without-fairing': {
    title: 'a quick truck without its fairing mark',
    explanation:
      'A quick truck does most of its way at one speed and then cushions to a stop. Nobody can shoot it without knowing on which frame the cushion begins, and how much of the way is done by then.',
    message: asGiven,
  },
  'turn-sense': {
    title: 'a turn that does not say which way',
    explanation:
      'From 0 to 90 degrees can be to the left or to the right: `cw` (clockwise) or `ccw` must be said.',
    message: asGiven,
  },
  'exposure-range': {
    title: 'more light than all',
    explanation: 'An exposure is a share of the light, from 0 % to 100 %.',
    message: asGiven,
  },
  'overlap-short': {
    title: 'a dissolve of one frame',
    explanation:
      'A dissolve begins with one cut alone and ends with the other, so it needs two frames at least.',
    message: asGiven,
  },
  'overlap-long': {
    title: 'a dissolve longer than its sheet',
    explanation:
      'A dissolve runs over the last or the first rows of the sheet, and the sheet has fewer. Make the cut longer, or the dissolve shorter.',
    message: asGiven,
  },
  'number-senseless': {
    title: 'a number of the camera that cannot be',
    explanation:
      'A field without width, a level scaled to nothing, a sway that takes no time or a way of kilometres: nothing can be shot from such a number. It is most likely a slip of the hand.',
    message: asGiven,
  },
  'size-vanishes': {
    title: 'a size that shrinks to nothing',
    explanation:
      'A curve may swing past its end and come back. Here it swings so far that the field (or the level) has no size left on some frame. Choose a second number nearer to 1, or a larger field to end on.',
    message: asGiven,
  },
  'move-backwards': {
    title: 'a leg that arrives before it leaves',
    explanation: 'The frames of a move run forwards, and a leg takes one frame at least.',
    message: asGiven,
  },
  'move-past-end': {
    title: 'a move past the end of the sheet',
    explanation:
      'The move (or fade, or exposure) ends on a frame that the sheet does not have, so nobody could shoot its end. After a retime give it new frames, or hang it on a mark.',
    message: asGiven,
  },
  'moves-overlap': {
    title: 'two moves of one thing at once',
    explanation:
      'The camera goes one way at a time, and so do the place, the scale, the turn and the sway of a level. Moves may follow each other: what stands on a frame with `@` leaves from there, and a range `a..b` takes its own frames. Only pulls of a level add up.',
    message: asGiven,
  },
  'move-jumps': {
    title: 'a move that starts elsewhere',
    explanation:
      'Each move starts where the last one of its kind ended; else the picture would jump within the cut. Start it from the field, place, scale or turn that the thing has then.',
    message: asGiven,
  },
  'quick-long': {
    title: 'a quick truck that takes long',
    explanation:
      'Quick trucks last around a second (common practice); one of more than two is an ordinary truck, or one of its frames is mistyped.',
    message: asGiven,
  },
  'ramps-long': {
    title: 'ramps longer than the move',
    explanation:
      'The frames over which a move gathers speed and those over which it loses it must fit into its steps together: `A@1 > B@24` has 23 steps, the range 1..24 has 24.',
    message: asGiven,
  },
  'curve-range': {
    title: 'a curve that leaves its range',
    explanation:
      'The first and third number of a curve are shares of the time and lie from 0 to 1, as CSS Easing has it; else the move would be in two places on one frame. The second and fourth are shares of the way and may swing past 0 and 1, as far as -10 and 10.',
    message: asGiven,
  },
  'steps-without-way': {
    title: 'graduations on a move that goes no way',
    explanation:
      'Graduations in millimetres say how far something goes on each frame. A truck or a turn goes nowhere; give it ramps or a curve.',
    message: asGiven,
  },
  'steps-count': {
    title: 'more or fewer graduations than steps',
    explanation:
      'There is one graduation a step. From the frame on which the thing stands still to the frame on which it has arrived: `A@1 > B@5` has four steps, the range 1..4 as well.',
    message: asGiven,
  },
  'steps-sum': {
    title: 'graduations that do not add up',
    explanation:
      'Graduations spaced by hand add up to the whole way, within a twentieth of a millimetre. Correct a graduation, or the place that the move goes to.',
    message: asGiven,
  },
  'fairing-share': {
    title: 'a fairing mark with nothing or all done',
    explanation:
      'At the fairing mark some of the way is done and some is left: more than 0 % and less than 100 %.',
    message: asGiven,
  },
  'fairing-outside': {
    title: 'a fairing mark outside its move',
    explanation:
      'The cushion begins at the fairing mark, so the mark lies between the frames that the move leaves from and arrives on.',
    message: asGiven,
  },
  'fairing-slow': {
    title: 'a cushion that would speed up',
    explanation:
      'The cushion keeps the speed that the move has at the fairing mark and loses it evenly. If less is done at the mark than a move of one speed would have done by then, it would have to go faster afterwards. Put the mark earlier, or have more done there.',
    message: asGiven,
  },
  'cushion-short': {
    title: 'a cushion that stops early',
    explanation:
      'The speed at the fairing mark is so high for what is left that 99.5 % of the cushion is done before half of its frames. The rest looks like a stop. Have less done at the mark, or put the mark later, or end the move sooner.',
    message: asGiven,
  },
  'pan-sizes': {
    title: 'a pan between fields of two sizes',
    explanation:
      'A pan keeps the size of the field. Where the size changes it is a truck, which is shot otherwise.',
    message: asGiven,
  },
  'truck-one-size': {
    title: 'a truck between fields of one size',
    explanation: 'A truck changes the size of the field. Where the size stays the camera only pans.',
    message: asGiven,
  },
  'speed-jumps': {
    title: 'a jump of the speed at a field passed through',
    explanation:
      'Two legs of one move meet with different speeds or directions, and the eye sees the knee. Ramps on both legs make it a stop, or other frames make the speeds agree. The measure, a quarter of the faster speed, is our own.',
    message: asGiven,
  },
  'carried-level': {
    title: 'a level fixed to the camera that should go with it',
    explanation:
      '`level B carry` fixes the level to the camera for the whole cut; a follow or a `carry` of one move would move it twice.',
    message: asGiven,
  },
  'pulls-along': {
    title: 'two pulls at once along one line',
    explanation:
      'Pulls of a level add up. Along one line that is one pull at the sum of both speeds, which is easier to shoot.',
    message: asGiven,
  },
  'sway-unrest': {
    title: 'a sway that ends away from rest',
    explanation:
      'After the last frame of a sway the level is at its place again. If the sway is not there by then the level jumps. End it after a whole number of half sways.',
    message: asGiven,
  },
  'field-off-chart': {
    title: 'a field that leaves the field chart',
    explanation:
      'On a field chart the steps to the east or west and the lines of the field come to no more than the lines of the chart, and the same to the north and south. A field beyond that shows what lies outside the chart.',
    message: asGiven,
  },
  'scan-enlarged': {
    title: 'a field so small that the scan is enlarged',
    explanation:
      'The drawings are scanned at the resolution that the episode says (`scan`), and the finished picture has so many pixels (`output`). Below a certain field the scan has fewer pixels than the picture, and lines grow soft. Scan finer, or draw larger.',
    message: asGiven,
  },
  strobing: {
    title: 'a speed that strobes',
    explanation:
      'Between 1/120 and 1/48 of the field’s width a frame a passing picture probably strobes: over 0.1 in on a 12 in field, and safe again as a zip pan from 0.25 in (a rule of drawn animation attributed to T. White). In a truck the slowest point of the picture counts. Go slower or faster, or blur.',
    message: asGiven,
  },
  judder: {
    title: 'a full width in less than seven seconds',
    explanation:
      'A picture that passes a whole width of the field in less than seven seconds can judder (a camera maker’s panning guide). It is a matter of taste and of what is seen, so it is a hint only.',
    message: asGiven,
  },
  'artwork-edge': {
    title: 'an edge of the artwork comes into the picture',
    explanation:
      'On some frame the camera sees past the edge of the paper. The message says from when on, by how much, and the smallest artwork that would do. A level whose edges may show, a cut-out for example, is marked `free`.',
    message: asGiven,
  },
  'artwork-long': {
    title: 'artwork of more than five metres',
    explanation:
      'The moves need artwork longer than anyone paints in one piece (five metres is our own measure). Paint it as a loop, or look for a mistyped speed.',
    message: asGiven,
  },
  'loop-short': {
    title: 'a loop too short',
    explanation:
      'A loop is at least as long as what the field takes of it, or the same drawing is seen twice at once; and its artwork is at least as long as the loop, or there are gaps.',
    message: asGiven,
  },
  'loop-askew': {
    title: 'a loop pulled askew',
    explanation:
      'A loop repeats along the length or the height of its artwork, so it can only be pulled along one of them.',
    message: asGiven,
  },
  'loop-two': {
    title: 'two loops of one level',
    explanation: 'A level is painted once. All its pulls speak of the same loop, or of none.',
    message: asGiven,
  },
  'fade-short': {
    title: 'a fade of one frame',
    explanation: 'A fade shows nothing on its first frame and all on its last, so it needs two at least.',
    message: asGiven,
  },
  'light-overlaps': {
    title: 'two fades or exposures at once',
    explanation:
      'Fades and dissolves say how much of the whole picture is seen, so only one of them can run at a time; the same holds for exposures of one level.',
    message: asGiven,
  },
  flashes: {
    title: 'light that flashes more than three times in a second',
    explanation:
      'More than three flashes in any second can bring on seizures in people with photosensitive epilepsy (WCAG 2.3.1, ITU-R BT.1702). Counted are white fades, light through and the appearing of levels marked as flashing. It is a count and no measurement of brightness, area or colour: the test of the broadcaster decides.',
    message: asGiven,
  },
};
