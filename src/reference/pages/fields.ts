import type { StatementPage } from '../page.js';

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
