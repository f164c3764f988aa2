import { expect, test } from 'vitest';
import { picture } from '../../../../src/language/catalogue/en/picture-texts.js';

test('a scan outside is told by the folder that drawings may lie in', () => {
  const path = '../scans/a.png';
  const { message } = picture['scan-outside'];
  const sentence = () => '';
  expect(message({ path, inEpisode: true }, sentence)).toBe(
    '`../scans/a.png` is not in this folder and not below the folder of the episode: drawings lie nowhere else.',
  );
  expect(message({ path, inEpisode: false }, sentence)).toBe(
    '`../scans/a.png` is not in this folder, and without an episode.yaml drawings lie nowhere else.',
  );
});
