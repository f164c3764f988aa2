import { moveTitles } from '../../../words/en/forms-en.js';
import { figure, plural, significant } from '../../../words/number-format.js';
import type { CameraMessages } from '../camera-codes.js';
import type { Texts } from '../catalogue-entry.js';
import { bounds, fieldQuantities, frameList, meant, paperMm, percent, quantities } from './terms-texts.js';

const turned = (deg: number): string =>
  deg === 0
    ? 'not turned'
    : `turned by ${figure(Math.abs(deg))}° ${deg > 0 ? 'clockwise' : 'counter-clockwise'}`;

export const camera: Texts<CameraMessages> = {
  'unknown-field': {
    title: 'a field that is not there',
    explanation:
      'A move or `fix` names a field that no `field` statement defines, here or in a used file. `full`, the standard field, is always there.',
    message: ({ name, guess }) =>
      `There is no field \`${name}\`${meant(guess, '; say what it is with `field`.')}`,
  },
  'field-full': {
    title: 'the standard field given another meaning',
    explanation: '`full` means the standard field in every cut, so no field of a cut can have that name.',
    message: () => 'The name `full` always means the standard field; give this field another name.',
  },
  'field-measures': {
    title: 'fields in percent and in lines of the chart',
    explanation:
      'Some houses give field sizes in percent of the standard field, others in lines of the field chart: 8F is no 8 %. A cut that mixes both is easily misread.',
    message: ({ field, other, percent: inPercent }) => {
      const [here, there] = inPercent
        ? ['in percent', 'in lines of the field chart']
        : ['in lines of the field chart', 'in percent'];
      return `Field \`${field}\` is given ${here}, and field \`${other}\` ${there}; are both meant so?`;
    },
  },
  'level-repeated': {
    title: 'a level named twice in one list',
    explanation:
      'A move takes each of its levels once, however often it is named. Perhaps another level was meant.',
    message: ({ level }) => `Level \`${level}\` is named twice here; once is enough.`,
  },
  'option-misplaced': {
    title: 'a word that has no meaning for this move',
    explanation:
      'Each kind of move has its own words: `carry` goes with pans and trucks, `loop` with pulls, `log` with trucks, `about` with trucks and turns of levels, `sideways` with shake and sway. Take the word out, or look whether another move was meant.',
    message: ({ option, move }) => `\`${option}\` has no meaning for ${moveTitles[move].one}.`,
  },
  'spacing-twice': {
    title: 'a leg that is spread twice',
    explanation:
      'An ease, a curve, graduations by hand or a fairing mark say how the distance of a leg is spread; a leg has one of them.',
    message: () => 'The distance of this leg is spread twice; take one of the two out.',
  },
  'fairing-misplaced': {
    title: 'a fairing mark without a quick truck',
    explanation:
      'The fairing mark says where the fairing of a quick truck begins. Other moves gather and lose speed with `ease`.',
    message: () =>
      'A fairing mark belongs to a quick truck: `truck quick … fair …`; other moves slow down with `ease`.',
  },
  'quick-without-fairing': {
    title: 'a quick truck without its fairing mark',
    explanation:
      'A quick truck does most of its move at one speed and then slows to a stop. Nobody can shoot it without knowing on which frame the fairing begins, and how much of the way is done by then.',
    message: () =>
      'A quick truck needs its fairing mark, with the frame and the share of the way done there: `fair イ@9 58%`.',
  },
  'turn-sense': {
    title: 'a turn that does not say which way',
    explanation:
      'From 0 to 90 degrees can be to the left or to the right: `cw` (clockwise) or `ccw` must be said.',
    message: () => 'A turn says which way it goes: `cw` (clockwise) or `ccw`.',
  },
  'exposure-range': {
    title: 'more light than all',
    explanation: 'An exposure is a share of the light, from 0 % to 100 %.',
    message: ({ exposure }) => `An exposure is from 0 % to 100 % of the light, but this is ${exposure} %.`,
  },
  'overlap-short': {
    title: 'an overlap of one frame',
    explanation:
      'An overlap begins with one cut alone and ends with the other, so it needs two frames at least.',
    message: () => 'An overlap lasts for two frames at least: one cut alone, then the other.',
  },
  'overlap-long': {
    title: 'an overlap longer than its sheet',
    explanation:
      'An overlap runs over the last or the first rows of the sheet, and the sheet has fewer. Make the cut longer, or the overlap shorter.',
    message: {
      cut: () => 'An overlap is no longer than the longest cut, ten minutes.',
      sheet: ({ frames, rows }) =>
        `This overlap lasts for ${frames} frames, but the whole sheet has ${rows} rows.`,
    },
  },
  'number-senseless': {
    title: 'a number of the camera that cannot be',
    explanation:
      'A field without width, a level scaled to nothing, a sway that takes no time or a distance of kilometres: nothing can be shot from such a number. It is most likely a slip of the hand.',
    message: {
      field: ({ quantity, field, value, bounds: allowed }) => {
        const [before, behind] = fieldQuantities[quantity];
        return `${before} field ${field} ${behind} is ${significant(value, 6)}; it must be ${bounds[allowed]}.`;
      },
      move: ({ quantity, value, bounds: allowed }) =>
        `${quantities[quantity]} is ${significant(value, 6)}; it must be ${bounds[allowed]}.`,
    },
  },
  'size-vanishes': {
    title: 'a size that shrinks to nothing',
    explanation:
      'A curve may swing past its end and come back. Here it swings so far that the field (or the level) has no size left on some frame. Choose a second number nearer to 1, or a larger field to end on.',
    message: ({ level, frame }, _, row) =>
      `${level ?? 'The field'} shrinks to nothing on ${row(frame)}; the curve swings too far past its end.`,
  },
  'move-backwards': {
    title: 'a leg that arrives before it leaves',
    explanation: 'The frames of a move run forwards, and a leg takes one frame at least.',
    message: ({ start, end }, _, row) =>
      `This leg should arrive on ${row(end)}, but it leaves on ${row(start)}; it needs one frame at least.`,
  },
  'move-past-end': {
    title: 'a move past the end of the sheet',
    explanation:
      'The move (or fade, or exposure) ends on a frame that the sheet does not have, so nobody could shoot its end. After a retime give it new frames, or hang it on a mark.',
    message: ({ light, end, rows }, _, row) =>
      `This ${light ? '' : 'move '}ends on ${row(end)}, past the end of the sheet, which has ${plural(rows, 'row')}.`,
  },
  'moves-overlap': {
    title: 'two moves of one thing at once',
    explanation:
      'The camera goes one way at a time, and so do the place, the scale, the turn and the sway of a level. A truck and a pan or a follow may run together: the truck gives the width then, the other one the centre. Moves may follow each other: what stands on a frame with `@` leaves from there, and a range `a..b` takes its own frames. Only pulls of a level add up.',
    message: ({ move, level, from, to }, _, row) =>
      `Two ${moveTitles[move].rival.replace(/^(\w+)/, '$1s')}${level === null ? '' : ` of ${level}`} run at once, from ${row(from)} to ${row(to)}.`,
  },
  'move-jumps': {
    title: 'a move that starts elsewhere',
    explanation:
      'Each move starts where the last one of its kind ended; else the picture would jump within the cut. Start it from the field, place, scale or turn that the thing has then.',
    message: {
      camera: ({ frame, move, field, widthMm, xMm, yMm, turnDeg }, _, row) =>
        `The camera would jump on ${row(frame)}: this ${move} starts from field ${field}, but the camera is ${figure(widthMm)} mm wide at ${figure(xMm)}, ${figure(yMm)}${turnDeg === 0 ? '' : ` turned ${figure(turnDeg)}°`}.`,
      level: ({ frame, level, of, starts, is }, _, row) => {
        const written = (value: number) => (of === 'scale' ? percent(value) : `${figure(value)}°`);
        return `${level} would jump on ${row(frame)}: this move starts from ${written(starts)}, but ${level} is at ${written(is)}.`;
      },
      slide: ({ frame, level, starts, ended }, _, row) =>
        `${level} would jump on ${row(frame)}: this slide starts at ${figure(starts.x)}, ${figure(starts.y)}, but its last slide ended at ${figure(ended.x)}, ${figure(ended.y)}.`,
    },
  },
  'quick-long': {
    title: 'a quick truck that takes long',
    explanation:
      'Quick trucks last around a second (common practice); one of more than two is an ordinary truck, or one of its frames is mistyped.',
    message: ({ frames, fps }) =>
      `This quick truck takes ${plural(frames, 'frame')}; quick ones last around a second, two (${2 * fps} frames) at most (common practice).`,
  },
  'ease-long': {
    title: 'an ease longer than the move',
    explanation:
      'The frames over which a move gathers speed and those over which it loses it must fit into its steps together: `A@1 > B@24` has 23 steps, the range 1..24 has 24.',
    message: ({ leave, arrive, steps }) =>
      leave < 0 || arrive < 0
        ? `An ease of ${Math.min(leave, arrive)} frames cannot be; 0 is none.`
        : `The ease takes ${leave} + ${arrive} frames, but this leg has only ${plural(steps, 'step')}; both ends together take ${steps} at most.`,
  },
  'curve-range': {
    title: 'a curve that leaves its range',
    explanation:
      'The first and third number of a curve are shares of the time and lie from 0 to 1, as CSS Easing has it; else the move would be in two places on one frame. The second and fourth are shares of the way and may swing past 0 and 1, as far as -10 and 10.',
    message: ({ x1, y1, x2, y2 }) =>
      `The curve is ${x1} ${y1} ${x2} ${y2}; its first and third number are shares of the time and lie from 0 to 1 (CSS Easing, cubic-bezier), the others from -10 to 10.`,
  },
  'steps-without-distance': {
    title: 'graduations on a move that covers no distance',
    explanation:
      'Graduations in millimetres say how far something goes on each frame, or by how much the field of a truck gets narrower or wider. A level that grows or turns does neither; give it `ease` or `curve`.',
    message: () =>
      'Graduations in mm are for what goes from place to place (pans, pulls, follows, slides) and for trucks of the camera, not for the scale or turn of a level.',
  },
  'steps-count': {
    title: 'more or fewer graduations than steps',
    explanation:
      'There is one graduation a step. From the frame on which the thing stands still to the frame on which it has arrived: `A@1 > B@5` has four steps, the range 1..4 as well.',
    message: ({ graduations, steps, start, end }, _, row) =>
      `There ${graduations === 1 ? 'is' : 'are'} ${plural(graduations, 'graduation')} for ${plural(steps, 'step')}, from ${row(start)} to ${row(end)}.`,
  },
  'steps-by-ratios': {
    title: 'graduations by hand and equal ratios',
    explanation:
      '`steps` of a truck says the change of width on each frame, and `log` makes the widths follow by equal ratios. Only one of them can hold. Write two trucks where one part is drawn by hand and the other is not.',
    message: () => '`steps` says the width on each frame already, so `log` has nothing left to spread.',
  },
  'steps-sum': {
    title: 'graduations that do not add up',
    explanation:
      'Graduations spaced by hand add up to the whole distance, within a twentieth of a millimetre. Those of a truck add up to the difference between the widths of its two fields. Correct a graduation, or the field or place that the move goes to.',
    message: ({ of, sumMm, wayMm, withinMm }) =>
      `The graduations add up to ${figure(sumMm)} mm, but the ${of === 'way' ? 'distance is' : 'width changes by'} ${figure(wayMm)} mm; they must agree within ${withinMm} mm.`,
  },
  'fairing-share': {
    title: 'a fairing mark with nothing or all done',
    explanation:
      'At the fairing mark some of the way is done and some is left: more than 0 % and less than 100 %.',
    message: ({ mark, share }) =>
      `At the fairing mark ${mark} ${percent(share)} of the way would be done; it must be more than nothing and less than all.`,
  },
  'fairing-outside': {
    title: 'a fairing mark outside its move',
    explanation:
      'The fairing begins at its mark, so the mark lies between the frames that the move leaves from and arrives on.',
    message: ({ mark, frame, first, last }, _, row) => {
      const must =
        last < first
          ? 'it must lie inside the move, and this one arrives on the frame after it leaves: give it more frames, or leave the mark out'
          : `it must lie inside the move, on frame ${first === last ? first : `${first} to ${last}`}`;
      return `The fairing mark ${mark} stands on ${row(frame)}; ${must}.`;
    },
  },
  'fairing-slow': {
    title: 'a fairing that would speed up',
    explanation:
      'The fairing keeps the speed that the move has at its mark and loses it evenly. If less is done at the mark than a move of one speed would have done by then, it would have to go faster afterwards. Put the mark earlier, or have more done there.',
    message: ({ mark, share, frame, latest, least }, _, row) =>
      `With ${percent(share)} done on ${row(frame)} the move would have to go faster after the fairing mark ${mark} than before it; ${latest === null ? 'have ' : `put the mark on ${row(latest)} or earlier, or have `}${least} % or more done there.`,
  },
  'fairing-short': {
    title: 'a fairing that stops early',
    explanation:
      'The speed at the fairing mark is so high for what is left that 99.5 % of the fairing is done before half of its frames. The rest looks like a stop. Have less done at the mark, or put the mark later, or end the move sooner.',
    message: ({ mark, still, frames }, _, row) =>
      `The fairing after ${mark} is 99.5 % done on ${row(still)}, before half of its ${plural(frames, 'frame')}; the rest looks like a stop.`,
  },
  'place-passed': {
    title: 'a place on the way without a frame',
    explanation:
      'A place on the way says with `@` on which frame it is reached. Only one smooth way (`curved`) may pass a place when it gets there, so that one `ease` governs all of it.',
    message: () =>
      'This place has no frame. Give it one with `@`, or make the way `curved`: then it is passed when the way gets there.',
  },
  'curve-straight': {
    title: 'a curved way between two places',
    explanation: 'A smooth way bends towards a third field or mark. Between two places alone it is straight.',
    message: () => 'Between two places the way is straight; `curved` needs a third one.',
  },
  'carry-width': {
    title: 'levels carried by a truck that gives only the width',
    explanation:
      'A pan or a follow and a truck that run at once share the camera: the truck gives the width, the other move the centre. Levels are carried with the centre, so `carry` stands behind the pan.',
    message: ({ partner }) =>
      `The ${partner} gives the centre here, and this truck only the width: it has nothing to carry levels along with. Write \`carry\` behind a pan.`,
  },
  'field-missed': {
    title: 'a field that two moves together do not reach',
    explanation:
      'Of a pan or a follow and a truck that run at once, the truck gives the width and the other move the centre. Where both have arrived, the camera should stand on the field that a move names. Let both end on the same field, or give the truck fields with one centre (then only their widths are meant) and the pan fields of one size.',
    message: {
      width: ({ field, frame, partner, widthMm, wantedMm }, _, row) =>
        `On ${row(frame)} the camera is ${figure(widthMm)} mm wide, and not ${figure(wantedMm)} mm as field \`${field}\` is: the ${partner} gives the width.`,
      centre: ({ field, frame, partner, at, wanted }, _, row) =>
        `On ${row(frame)} the camera stands at ${figure(at.x)}, ${figure(at.y)}, and not on field \`${field}\` at ${figure(wanted.x)}, ${figure(wanted.y)}: the ${partner} gives the centre.`,
      turn: ({ field, frame, partner, turnDeg, wantedDeg }, _, row) =>
        `On ${row(frame)} the camera is ${turned(turnDeg)}, and field \`${field}\` is ${turned(wantedDeg)}: the ${partner} gives the turn.`,
    },
  },
  'pan-sizes': {
    title: 'a pan between fields of two sizes',
    explanation:
      'A pan keeps the size of the field. Where the size changes it is a truck, which is shot otherwise.',
    message: ({ from, fromMm, to, toMm }) =>
      `Field ${from} is ${figure(fromMm)} mm wide and ${to} ${figure(toMm)} mm: where the sizes differ it is a truck.`,
  },
  'truck-one-size': {
    title: 'a truck between fields of one size',
    explanation: 'A truck changes the size of the field. Where the size stays the camera only pans.',
    message: ({ from, to, widthMm }) =>
      `Fields ${from} and ${to} are both ${figure(widthMm)} mm wide: where the size stays it is a pan.`,
  },
  'speed-jumps': {
    title: 'a jump of the speed at a field passed through',
    explanation:
      'Two legs of one move meet with different speeds or directions, and the eye sees the knee. An ease on both legs makes it a stop, or other frames make the speeds agree. The measure, a quarter of the faster speed, is our own.',
    message: ({ frame, field, before, after }, _, row) =>
      `The speed jumps on ${row(frame)}, where the move passes ${field ?? 'a mark'}: ${figure(before)} mm a frame before, ${figure(after)} after.`,
  },
  'carried-level': {
    title: 'a level fixed to the camera that should go with it',
    explanation:
      '`level B carry` fixes the level to the camera for the whole cut; a follow or a `carry` of one move would move it twice.',
    message: ({ level }) =>
      `${level} is fixed to the camera throughout (\`level ${level} carry\`), so it cannot go along with this move as well.`,
  },
  'pulls-along': {
    title: 'two pulls at once along one line',
    explanation:
      'Pulls of a level add up. Along one line that is one pull at the sum of both speeds, which is easier to shoot.',
    message: ({ level }) =>
      `${level} is pulled twice at once along one line, so both speeds add up; one pull would say it in one number.`,
  },
  'sway-unrest': {
    title: 'a sway that ends away from rest',
    explanation:
      'After the last frame of a sway the level is at its place again. If the sway is not there by then the level jumps. End it after a whole number of half sways.',
    message: ({ offMm, frame, levels, frames }, _, row) =>
      `The sway is ${figure(offMm)} mm from rest on its last ${row(frame)}, so ${levels.join(', ')} would jump back; ${figure(frames)} frames, a whole number of half sways, would end at rest.`,
  },
  'field-off-chart': {
    title: 'a field that leaves the field chart',
    explanation:
      'On a field chart the steps to the east or west and the lines of the field come to no more than the lines of the chart, and the same to the north and south. A field beyond that shows what lies outside the chart.',
    message: ({ field, lines, reaches }) =>
      `Field ${field} reaches over the ${lines}-field chart: its steps and its lines come to ${reaches.map((one) => `${figure(one.lines)} to the ${one.side}`).join(' and ')}, where ${lines} is the edge.`,
  },
  'scan-enlarged': {
    title: 'a field so small that the scan is enlarged',
    explanation:
      'The drawings are scanned at the resolution that the episode says (`scan`), and the finished picture has so many pixels (`output`). Below a certain field the scan has fewer pixels than the picture, and lines grow soft. Scan finer, or draw larger.',
    message: ({ level, share, frame, dpi, enough, pixels }, _, row) => {
      const what =
        level === null
          ? `The field is ${percent(share)} of the standard field on ${row(frame)}`
          : `${level} shows as little as a field of ${percent(share)} would on ${row(frame)}`;
      return `${what}: scanned at ${dpi} dpi it is enlarged from ${percent(enough)} down, to fill ${pixels} pixels.`;
    },
  },
  strobing: {
    title: 'a speed that strobes',
    explanation:
      'Between 1/120 and 1/48 of the field’s width a frame a passing picture probably strobes: over 0.1 in on a 12 in field, and safe again as a zip pan from 0.25 in (a rule of drawn animation). What camera and levels do together counts, at the point of the picture that goes fastest; in a truck with a pan that is an edge. Go slower or faster, or blur.',
    message: ({ frames, edge, mm, fraction }, _, row) =>
      `On ${frameList(frames, row)} the ${edge ? 'edge of the ' : ''}picture passes at up to ${figure(mm)} mm a frame, 1/${fraction} of the field's width: between 1/120 and 1/48 it probably strobes.`,
  },
  judder: {
    title: 'a full width in less than seven seconds',
    explanation:
      'A picture that passes a whole width of the field in less than seven seconds can judder (a camera maker’s panning guide). It is a matter of taste and of what is seen, so it is a hint only.',
    message: ({ frames, seconds, least }, _, row) =>
      `On ${frameList(frames, row)} the picture passes a full width in ${figure(seconds)} seconds; in less than ${least} it can judder (a camera maker's panning guide).`,
  },
  'artwork-edge': {
    title: 'an edge of the artwork comes into the picture',
    explanation:
      'On some frame the camera sees past the edge of the paper. The message says from when on, by how much, and the smallest artwork that would do. A level whose edges may show, a cut-out for example, is marked `free`.',
    message: ({ level, side, frame, byMm, worstFrame, worstMm, needed }, _, row) => {
      const worst = worstFrame === frame ? '' : ` (at worst ${paperMm(worstMm)} mm, on ${row(worstFrame)})`;
      const enough = `${paperMm(needed.width)} x ${paperMm(needed.height)} mm with its centre at ${figure(needed.x)}, ${figure(needed.y)}`;
      return `The ${side} edge of ${level} comes into the picture on ${row(frame)}, by ${paperMm(byMm)} mm${worst}; ${enough} would do.`;
    },
  },
  'artwork-long': {
    title: 'artwork of more than five metres',
    explanation:
      'The moves need artwork longer than anyone paints in one piece (five metres is our own measure). Paint it as a loop, or look for a mistyped speed.',
    message: ({ level, lengthMm }) =>
      `${level} would have to be painted ${figure(lengthMm / 1000)} m long; is a \`loop\` missing, or a speed mistyped?`,
  },
  'loop-short': {
    title: 'a loop too short',
    explanation:
      'A loop is at least as long as what the field takes of it, or the same drawing is seen twice at once; and its artwork is at least as long as the loop, or there are gaps.',
    message: {
      field: ({ level, loopMm, neededMm }) =>
        `The loop of ${level} is ${figure(loopMm)} mm long, but the field takes ${paperMm(neededMm)} mm of it: the same drawing would be seen twice at once.`,
      artwork: ({ level, loopMm, paintedMm }) =>
        `The loop of ${level} is ${figure(loopMm)} mm long, but its artwork only ${figure(paintedMm)} mm: there would be gaps.`,
    },
  },
  'loop-askew': {
    title: 'a loop pulled askew',
    explanation:
      'A loop repeats along the length or the height of its artwork, so it can only be pulled along one of them.',
    message: ({ level }) =>
      `A loop runs along the length or the height of its artwork, but this pull moves ${level} askew to both.`,
  },
  'loop-two': {
    title: 'two loops of one level',
    explanation: 'A level is painted once. All its pulls speak of the same loop, or of none.',
    message: ({ level, here, there }) => {
      const way = ({ mm, axis }: typeof here) =>
        `${figure(mm)} mm along its ${axis === 'x' ? 'length' : 'height'}`;
      return `${level} is painted as one loop, but this pull says ${way(here)} where another says ${way(there)}.`;
    },
  },
  'iris-outside': {
    title: 'an iris with its centre outside the picture',
    explanation:
      'The centre of an iris is counted from the middle of the picture, in millimetres of the standard field: to the right, up. The circle begins or ends there, so it should be in the picture.',
    message: ({ xMm, yMm }) =>
      `The centre of this iris, ${figure(xMm)},${figure(yMm)}, lies outside the picture.`,
  },
  'fade-short': {
    title: 'a fade, wipe or iris of one frame',
    explanation:
      'A fade, a wipe or an iris shows nothing of the picture on one end and all of it on the other, so it needs two frames at least.',
    message: () =>
      'This needs two frames at least: nothing of the picture shows on one end, all of it on the other.',
  },
  'light-overlaps': {
    title: 'two fades, wipes or exposures at once',
    explanation:
      'Fades, wipes, irises and overlaps say how much of the whole picture is seen, so only one of them can run at a time; the same holds for exposures of one level.',
    message: ({ levels, from, to }, _, row) => {
      const what =
        levels === null
          ? 'Two fades, wipes, irises or overlaps of the whole picture'
          : `Two exposures of ${levels.join(', ')}`;
      return `${what} run at once, from ${row(from)} to ${row(to)}.`;
    },
  },
  flashes: {
    title: 'light that flashes more than three times in a second',
    explanation:
      'More than three flashes in any second can bring on seizures in people with photosensitive epilepsy (WCAG 2.3.1, ITU-R BT.1702). A flash is a pair of opposing changes, so dips to black count as well as white. Counted are fades, exposures, a glow and the appearing of levels marked as flashing. It is a count and no measurement of brightness, area or colour: the test of the broadcaster decides.',
    message: ({ count, from, to }, _, row) =>
      `Light flashes ${count} times within a second, on ${row(from, to)}: more than three flashes in any second can bring on seizures (WCAG 2.3.1, ITU-R BT.1702).`,
  },
  'flash-unmeasured': {
    title: 'flashing light that only a test of the picture can judge',
    explanation:
      'Light that flashes can bring on seizures. The text tells when, not how bright, how large or how red the flash is in the picture, so the program cannot say that it is harmless. The sheet bears a caution, and the finished picture goes through the test of the broadcaster or publisher.',
    message: ({ count }) =>
      `Light flashes here${count > 0 ? `, ${count === 1 ? 'once' : count === 2 ? 'twice' : 'three times'} in its fastest second` : ''}; whether that is harmless only the broadcaster's test of the finished picture can say.`,
  },
};
