import { describe, expect, it } from 'vitest';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { filmOutput, insteadOf } from '../../src/shoot/film-output.js';

const FILES = { 'ferry/episode.yaml': '', 'ferry/1.cut': 'cut 1\n', 'ferry/2.cut': 'cut 2\n' };

async function outputOf(args: readonly string[], output?: string) {
  const host = memoryHost(FILES);
  const found = await findCuts(host, args);
  const chosen = filmOutput(host, found, output);
  return chosen.kind === 'film' ? chosen.file.name : chosen.numbered.pathOf(7).name;
}

describe('the output', () => {
  it('is a film beside the cut, or beside the manifest of a whole episode', async () => {
    expect(await outputOf(['ferry/1.cut'])).toBe('ferry/1.mp4');
    expect(await outputOf(['ferry/episode.yaml'])).toBe('ferry/ferry.mp4');
  });

  it('needs a name where several cuts are no whole episode', async () => {
    await expect(outputOf(['ferry/1.cut', 'ferry/2.cut'])).rejects.toMatchObject({
      parameters: { variant: 'output-nameless', ending: '.mp4' },
    });
    expect(await outputOf(['ferry/1.cut', 'ferry/2.cut'], 'two.mov')).toBe('two.mov');
  });

  it('is pictures in a folder, or as they are named', async () => {
    expect(await outputOf(['ferry/1.cut'], 'frames/')).toBe('frames/0007.png');
    expect(await outputOf(['ferry/1.cut'], 'ferry')).toBe('ferry/0007.png');
    expect(await outputOf(['ferry/1.cut'], 'f/c1_%05d_x.png')).toBe('f/c1_00007_x.png');
    expect(await outputOf(['ferry/1.cut'], 'f/%d.png')).toBe('f/7.png');
  });

  it('takes the endings of films in any case', async () => {
    expect(await outputOf(['ferry/1.cut'], 'A.MP4')).toBe('A.MP4');
    await expect(outputOf(['ferry/1.cut'], 'a.avi')).rejects.toMatchObject({
      parameters: { variant: 'film-ending' },
    });
  });
});

it('puts the pictures in place of a film into a folder of its name', () => {
  const pictures = insteadOf({ path: '/work/out/c012.mp4', name: 'out/c012.mp4' }, memoryHost());
  expect(pictures.folder).toBe('out/c012');
  expect(pictures.pathOf(12)).toEqual({ path: '/work/out/c012/0012.png', name: 'out/c012/0012.png' });
});
