import { createCanvas, loadImage } from '@napi-rs/canvas';
import { describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { installFilmProgram } from '../shoot/film-program.js';
import { CUT, fileNames, run } from './run.js';

const SMALL = ['--size', '32x18'] as const;

/** Width, height and the colour in the middle of a picture in a world. */
async function pictureIn(host: MemoryHost, name: string) {
  const image = await loadImage(Buffer.from(host.files.get(`/work/${name}`)!));
  const canvas = createCanvas(image.width, image.height);
  canvas.getContext('2d').drawImage(image, 0, 0);
  const { data } = canvas.getContext('2d').getImageData(image.width >> 1, image.height >> 1, 1, 1);
  return { width: image.width, height: image.height, middle: [...data.slice(0, 3)] };
}

/** A drawing that is one colour all over. */
function sheetOf(colour: string): Uint8Array {
  const canvas = createCanvas(30, 20);
  const context = canvas.getContext('2d');
  context.fillStyle = colour;
  context.fillRect(0, 0, 30, 20);
  return canvas.toBuffer('image/png');
}

describe('shoot', () => {
  test('writes a picture a frame into a folder', async () => {
    const host = memoryHost({ 'c012.cut': CUT });
    const { status, error } = await run(host, 'shoot', 'c012.cut', '--output', 'frames/', ...SMALL);
    expect([status, error]).toEqual([0, 'wrote frames: 1+0, 24 pictures; nothing is drawn yet\n']);
    const names = fileNames(host).filter((one) => one !== 'c012.cut');
    expect(names).toEqual(
      Array.from({ length: 24 }, (_, i) => `frames/${String(i + 1).padStart(4, '0')}.png`),
    );
    expect(await pictureIn(host, 'frames/0024.png')).toMatchObject({ width: 32, height: 18 });
  });

  test('names pictures as it is told to', async () => {
    const host = memoryHost({ 'c012.cut': CUT });
    await run(host, 'shoot', 'c012.cut', '--output', 'out/c012-%03d.png', '--to', '2', ...SMALL);
    expect(fileNames(host)).toEqual(['c012.cut', 'out/c012-001.png', 'out/c012-002.png']);
  });

  test('writes a film beside the cut, and nothing besides', async () => {
    const host = memoryHost({ 'cuts/c012.cut': CUT });
    const film = installFilmProgram(host);
    const { status, error } = await run(host, 'shoot', 'cuts/c012.cut', ...SMALL);
    expect([status, error]).toEqual([0, 'wrote cuts/c012.mp4: 1+0, 24 frames; nothing is drawn yet\n']);
    expect(fileNames(host)).toEqual(['cuts/c012.cut', 'cuts/c012.mp4']);
    expect(Buffer.from(host.files.get('/work/cuts/c012.mp4')!).toString()).toBe('film of 24 frames');
    expect(film.frames.every(({ length }) => length === 32 * 18 * 4)).toBe(true);
    expect(film.args).toContain('24');
  });

  test('writes pictures where there is no program for films, and says so', async () => {
    const host = memoryHost({ 'c012.cut': CUT });
    const { status, error } = await run(host, 'shoot', 'c012.cut', '--to', '2', ...SMALL);
    expect(status).toBe(0);
    expect(error).toContain('`c012.mp4` needs ffmpeg, which is not installed: the pictures are in `c012`');
    expect(fileNames(host)).toEqual(['c012.cut', 'c012/0001.png', 'c012/0002.png']);
  });

  test('shows the scans of a level, each on its frames', async () => {
    const host = memoryHost({
      'episode.yaml': 'scan: 10dpi\ndrawings: scans/{level}{number}.png\n',
      'c012.cut': 'cut 12\ntime 1+0\nstack BG A\nA: 1:12 2..\n',
      'scans/BG.png': sheetOf('#ffffff'),
      'scans/A1.png': sheetOf('#ff0000'),
      'scans/A2.png': sheetOf('#0000ff'),
    });
    const options = ['--output', 'f/', '--clean', ...SMALL];
    const { error } = await run(host, 'shoot', 'c012.cut', ...options);
    expect(error).toBe('wrote f: 1+0, 24 pictures\n');
    expect((await pictureIn(host, 'f/0012.png')).middle).toEqual([255, 0, 0]);
    expect((await pictureIn(host, 'f/0013.png')).middle).toEqual([0, 0, 255]);
  });

  test('says one thing of a folder of broken scans, and how many there are', async () => {
    const host = memoryHost({
      'episode.yaml': 'drawings: scans/{level}{number}.png\n',
      'c012.cut': 'cut 12\ntime 1+0\nstack BG A\nA: 1:8 2:8 3..\n',
      'scans/A1.png': sheetOf('#ff0000').subarray(0, 60),
      'scans/A2.png': 'GIF89a and so on',
      'scans/A3.png': '',
    });
    const { status, error } = await run(host, 'shoot', 'c012.cut', '--output', 'f/', ...SMALL);
    expect(status).toBe(0);
    expect(error).toBe(
      'Warning: `scans/A1.png` cannot be shown: it is cut off or damaged. The same goes for 2 more drawings of level A.\nc012.cut: scan-unreadable\n' +
        'wrote f: 1+0, 24 pictures; 1 of 4 drawings not drawn yet\n',
    );
  });

  test('says a caution before a cut whose light flashes is looked at', async () => {
    const host = memoryHost({ 'c012.cut': `${CUT}glow A 1..12\n` });
    const { error } = await run(host, 'shoot', 'c012.cut', '--output', 'f/', '--to', '1', ...SMALL);
    expect(error).toContain('cut 1: CAUTION: flashing light can trigger seizures.');
    expect(error.indexOf('CAUTION')).toBeLessThan(error.indexOf('wrote'));
    const plain = memoryHost({ 'c012.cut': CUT });
    const { error: quiet } = await run(plain, 'shoot', 'c012.cut', '--output', 'f/', '--to', '1', ...SMALL);
    expect(quiet).not.toContain('CAUTION');
  });

  test('leaves a film of before as it was when the program gives up', async () => {
    const host = memoryHost({ 'c012.cut': CUT, 'c012.mp4': 'the old film' });
    installFilmProgram(host, { after: 3, said: '[out#0 @ 0x55] Unknown thing\n' });
    const { status, error } = await run(host, 'shoot', 'c012.cut', ...SMALL);
    expect(status).toBe(2);
    expect(error).toBe(
      'Error: `c012.mp4` was not written: ffmpeg says: Unknown thing.\ncommand line: film-failed\n',
    );
    expect(fileNames(host)).toEqual(['c012.cut', 'c012.mp4']);
    expect(Buffer.from(host.files.get('/work/c012.mp4')!).toString()).toBe('the old film');
  });

  test('stops at the picture that finds no room', async () => {
    const host = memoryHost({ 'c012.cut': CUT });
    host.room = 2000;
    const { status, error } = await run(host, 'shoot', 'c012.cut', '--output', 'f/', ...SMALL);
    expect(status).toBe(2);
    expect(error).toMatch(/^Error: .*`f\/00\d\d\.png`.*the disk is full.*\n.*: output-unwritable$/m);
    expect(error).not.toContain('wrote');
    expect(fileNames(host).length).toBeLessThan(24);
  });

  test('makes one film of an episode, from cut point to cut point, under the name of its folder', async () => {
    const cut = (number: number, more: string) => `cut ${number}\ntime 1+0\nA: 1..\n${more}`;
    const host = memoryHost({
      'ferry/episode.yaml': '',
      'ferry/1.cut': cut(1, 'overlap out 8\n'),
      'ferry/2.cut': cut(2, 'overlap in 8\n'),
      'ferry/house.cut': 'phrase blink = 1\n',
    });
    const film = installFilmProgram(host);
    const { error } = await run(host, 'shoot', 'ferry', ...SMALL);
    expect(error).toBe('wrote ferry/ferry.mp4: 2+0, 48 frames; nothing is drawn yet\n');
    expect(film.frames).toHaveLength(48);
  });

  test('says what is wrong with overlaps that make no film', async () => {
    const cut = (number: number, more: string) => `cut ${number}\ntime 1+0\nA: 1..\n${more}`;
    const host = memoryHost({ '1.cut': cut(1, 'overlap out 8\n'), '2.cut': cut(2, '') });
    const { status, error } = await run(host, 'shoot', '1.cut', '2.cut', '--output', 'f/', ...SMALL);
    expect(status).toBe(1);
    expect(error).toContain(': edit-overlap\n');
    expect(fileNames(host)).toEqual(['1.cut', '2.cut']);
  });

  test('shoots the others where one cut has errors', async () => {
    const host = memoryHost({ '1.cut': CUT, '2.cut': 'cut 2\ntime 1+0\nA: 1:2\n' });
    const { status, error } = await run(
      host,
      'shoot',
      '1.cut',
      '2.cut',
      '--output',
      'f/',
      '--to',
      '2',
      ...SMALL,
    );
    expect(status).toBe(1);
    expect(error).toContain('1 cut not shot: 1 error');
    expect(error).toContain('wrote f: 0+2, 2 pictures');
  });

  test('takes a cut from standard input', async () => {
    const host = memoryHost();
    host.input = Buffer.from(CUT);
    const { status } = await run(host, 'shoot', '-', '--output', 'f/', '--from', '24', ...SMALL);
    expect(status).toBe(0);
    expect(fileNames(host)).toEqual(['f/0001.png']);
  });

  test.each([
    [['--size', '9x9'], 'each from 16 to 8192'],
    [['--size', 'large'], 'such as 960x540'],
    [['--from', '2+0'], 'lies behind the end'],
    [['--from', '9', '--to', '3'], 'lies before'],
    [['--output', 'c012.gif'], 'ends in .mp4, .mov, .mkv or .webm'],
    [['--output', 'a%d/b%d.png'], 'one number in them'],
    [['--output', 'b%s.png'], 'one number in them'],
    [['--output', '-'], 'no text for standard output'],
    [['--output', 'c012.cut'], ': output-is-input\n'],
  ])('refuses %j', async (options, words) => {
    const host = memoryHost({ 'c012.cut': CUT });
    const { status, error } = await run(host, 'shoot', 'c012.cut', ...options);
    expect(status).toBe(2);
    expect(error).toContain(words);
    expect(fileNames(host)).toEqual(['c012.cut']);
  });
});
