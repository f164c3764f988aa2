import { expect, test } from 'vitest';
import { evenSteps } from '../../../src/shot/camera/bind-spacing.js';

test('a ramp goes as far as half its frames at constant speed; nothing else shortens the way', () => {
  // s = a t² / 2 with v = a t: half of v t.
  expect(evenSteps({ form: 'ease', leave: 6, arrive: 12 }, 24)).toBe(15);
  expect(evenSteps({ form: 'ease', leave: 0, arrive: 0 }, 24)).toBe(24);
  expect(evenSteps({ form: 'linear' }, 24)).toBe(24);
  expect(evenSteps({ form: 'curve', x1: 0.4, y1: 0, x2: 0.6, y2: 1 }, 24)).toBe(24);
});
