import type { StatementPage } from '../statement-pages.js';

export const lightPages: Readonly<Record<string, StatementPage>> = {
  fade: {
    title: 'from black, to black, or white',
    text: 'The whole picture. The first frame shows nothing of the fade, the last all of it, so it takes two frames at least. A wedge in the camera column, and a line in the memo.',
    parts: [
      ['in', 'from black'],
      ['out', 'to black'],
      ['white', 'from white, to white; before or behind the range'],
      ['1..24', 'its frames'],
    ],
    examples: [
      {
        text: 'A: 1..\nfade in 1..24\nfade out 4+1..5+0\n',
        says: 'Up from black in a second, down again in the last.',
      },
      {
        text: 'A: 1..\nfade out white 4+1..5+0\n',
        says: 'To white.',
        expect: 'hint=flash-unmeasured',
      },
    ],
    codes: [
      'fade-short',
      'light-overlaps',
      'range-backwards',
      'move-past-end',
      'flashes',
      'flash-unmeasured',
    ],
    see: ['overlap', 'expose'],
    subject: 'light.md#fade',
  },
  wipe: {
    title: 'an edge that travels over the picture',
    text: 'The picture comes or goes behind a straight edge that travels at even speed. The first frame shows nothing of it, the last all of it, so it takes two frames at least. In the camera column a box with a slanting line, and a line in the memo. What is seen on the other side of the edge is black; where that is another cut, say so in a memo.',
    parts: [
      ['in', 'the edge uncovers the picture'],
      ['out', 'it covers the picture'],
      ['left, right, up, down', 'where the edge travels to'],
      ['1..24', 'its frames'],
    ],
    examples: [
      { text: 'A: 1..\nwipe in right 1..18\n', says: 'The picture is uncovered from the left.' },
      { text: 'A: 1..\nwipe out up 4+7..5+0\n', says: 'It is covered from below.' },
    ],
    codes: ['fade-short', 'light-overlaps', 'range-backwards', 'move-past-end'],
    see: ['iris', 'fade', 'overlap'],
    subject: 'light.md#wipe-and-iris',
  },
  iris: {
    title: 'a circle that opens or closes',
    text: 'The picture is seen in a circle that grows until it shows all, or shrinks to a point. Around it is black. In the camera column a wedge with a ring, and a line in the memo.',
    parts: [
      ['in', 'it opens'],
      ['out', 'it closes'],
      ['1..24', 'its frames'],
      [
        'at 40,-10',
        'its centre, mm of the standard field from the middle of the picture: to the right, up. Default: the middle',
      ],
    ],
    examples: [
      { text: 'A: 1..\niris in 1..20 at -30,12\n', says: 'It opens on something left of the middle.' },
      { text: 'A: 1..\niris out 4+1..5+0\n', says: 'It closes in the last second.' },
    ],
    codes: ['fade-short', 'iris-outside', 'light-overlaps', 'range-backwards', 'move-past-end'],
    see: ['wipe', 'fade'],
    subject: 'light.md#wipe-and-iris',
  },
  expose: {
    title: 'double exposure',
    text: 'A share of the light for some levels. The statement speaks of its own frames only.',
    parts: [
      ['B, A,B', 'the levels'],
      ['50%', 'the share, for all frames'],
      ['0%>50%', 'from one share to another'],
      ['1..24', 'its frames'],
    ],
    examples: [
      {
        text: 'A: 1..\nB "ghost": x:24 1..\nexpose B 0%>50% 1+1..2+0\nexpose B 50% 2+1..5+0\n',
        says: 'A ghost comes up to half the light, and stays.',
      },
      { text: 'A: 1..\nB "shadow": 1..\nexpose B 40% 1..\n', says: 'A shadow throughout.' },
    ],
    codes: [
      'exposure-range',
      'flashes',
      'flash-unmeasured',
      'light-overlaps',
      'unknown-level',
      'level-repeated',
      'range-backwards',
      'move-past-end',
    ],
    see: ['fade', 'glow', 'effect'],
    subject: 'light.md#expose',
  },
  glow: {
    title: 'light from behind the artwork',
    text: 'A second exposure with light from below. Each glow counts as a flash of light: more than three in a second are a warning, and a caution only; WCAG 2.3.1, ITU-R BT.1702 and the broadcaster’s own test decide.',
    parts: [
      ['C, A,C', 'the levels'],
      ['1+1..2+0', 'its frames'],
    ],
    examples: [
      {
        text: 'A: 1..\nC "lamp": x:24 1..\nglow C 1+1..2+0\n',
        says: 'The lamp glows for a second.',
        expect: 'hint=flash-unmeasured',
      },
      {
        text: 'A: 1..\nC "lamp": 1..\nD "window": 1..\nglow C,D 2+1..\n',
        says: 'Two levels, to the end.',
        expect: 'hint=flash-unmeasured',
      },
    ],
    codes: [
      'flashes',
      'flash-unmeasured',
      'level-repeated',
      'unknown-level',
      'range-backwards',
      'move-past-end',
    ],
    see: ['expose', 'effect', 'level'],
    subject: 'light.md#glow',
  },
  effect: {
    title: 'whatever else the compositor must do',
    text: 'In your words, for some levels or, without names, for the whole picture. The words stand in the camera column and in the memo.',
    parts: [
      ['"heat haze"', 'what is to be done'],
      ['A,B', 'the levels. Default: the whole picture'],
      ['1..5+0', 'its frames'],
    ],
    examples: [
      { text: 'A: 1..\nB: 1..\neffect "heat haze" A,B 1..5+0\n', says: 'Two levels, the whole cut.' },
      { text: 'A: 1..\neffect "grain" 2+1..\n', says: 'The whole picture, to the end.' },
    ],
    codes: ['unknown-level', 'level-repeated', 'range-backwards', 'missing-quotes', 'move-past-end'],
    see: ['expose', 'glow', 'note'],
    subject: 'light.md#effect',
  },
  overlap: {
    title: 'overlap (overlap) with a neighbour',
    text: 'Over the first rows of the sheet, or the last. The time of a cut runs to the middle of its overlap, so the sheet is longer by half of it: the handle. Frame 1 is the first row of the sheet, handles and all. With `overlap: full` in the episode there are no handles. The cut on the other side says the same length.',
    parts: [
      ['in', 'with the cut before, over the first rows'],
      ['out', 'with the cut after, over the last rows'],
      ['24, 1+0', 'how long the overlap is'],
    ],
    examples: [
      {
        text: 'A: 1..\noverlap out 1+0\n',
        time: '4+0',
        says: 'Four seconds make a sheet of 4+12: the last 24 rows overlap, 12 of them a handle.',
      },
      { text: 'A: 1..\noverlap in 24\noverlap out 24\n', time: '4+0', says: 'On both sides.' },
    ],
    codes: [
      'overlap-short',
      'overlap-long',
      'overlap-differs',
      'overlap-fps',
      'overlap-unanswered',
      'overlap-missing',
      'overlap-alone',
      'overlap-unchecked',
      'light-overlaps',
      'statement-twice',
    ],
    see: ['fade', 'time'],
    subject: 'light.md#overlap',
  },
};

export const fieldPages: Readonly<Record<string, StatementPage>> = {
  field: {
    title: 'what the camera sees',
    text: 'A rectangle with a name: its width, where its centre lies, how it is turned. Its shape is always that of the standard field, which is called `full` and always there. Millimetres on the artwork, from the centre of the standard field: to the right, up. It prints on the camera chart once a move or a `fix` goes there.',
    parts: [
      ['full', 'as wide as the standard field'],
      ['60%', 'its width as a share of the standard field’s'],
      ['8F', 'eight lines of the field chart: 8/12 of the width on a 12-field chart'],
      ['120mm', 'its width; mm, cm or in'],
      ['at 40,-12', 'its centre, mm. Default: 0,0'],
      ['at 2N 3E', 'its centre in steps of the field chart, half a line each'],
      ['cw 5, ccw 5', 'turned 5 degrees clockwise, counter-clockwise. Default: upright'],
    ],
    examples: [
      {
        text: 'A: 1..\nfield B 96% at 4,-2 cw 2\npan full@1 > C@2+0\nfield C full at 12,0\ntruck C@2+1 > B@5+0 ease 12\n',
        says: 'Three fields: `full`, C to the right of it, and B, a little smaller and turned.',
      },
      {
        text: 'A: 1..\nfield B 8F at 2N 3E\nfix B\n',
        says: 'On a field chart. So small a field enlarges the scan, and a hint says so.',
        expect: 'hint=scan-enlarged',
      },
    ],
    codes: [
      'field-full',
      'field-measures',
      'field-off-chart',
      'number-senseless',
      'scan-enlarged',
      'name-twice',
      'unknown-field',
      'size-vanishes',
    ],
    see: ['fix', 'pan', 'truck'],
    subject: 'camera.md#fields',
  },
  fix: {
    title: 'where the camera stays',
    text: 'The camera stands on this field for the whole cut. Without any camera statement it is `fix full`. With moves the camera rests where the first one starts. The camera column says FIX.',
    parts: [['B', 'the field']],
    examples: [
      { text: 'A: 1..\nfield B 97% at 3,-2\nfix B\n', says: 'The camera stays on B.' },
      { text: 'A: 1..\nfix full\n', says: 'Said, although it would hold anyway.' },
    ],
    codes: ['unknown-field', 'statement-twice'],
    see: ['field', 'pan', 'truck'],
    subject: 'camera.md#fields',
  },
};
