import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { FilmWriter, PictureWriter } from '../../src/shoot/film-writers.js';
import { fileNames } from '../command/run.js';
import { installFilmProgram } from './film-program.js';

const FILE = { path: '/work/a.mp4', name: 'a.mp4' };
const FORM = { width: 4, height: 2, fps: 24, ending: '.mp4', sound: null };

function frame(colour: string) {
  const canvas = createCanvas(4, 2);
  const context = canvas.getContext('2d');
  context.fillStyle = colour;
  context.fillRect(0, 0, 4, 2);
  return canvas;
}

describe('a film', () => {
  it('gets each frame as it was when it was added', async () => {
    const host = memoryHost();
    const given = installFilmProgram(host);
    const writer = (await FilmWriter.open(host, FILE, FORM)) as FilmWriter;
    for (const colour of ['#f00', '#0f0', '#00f']) expect(await writer.add(frame(colour))).toBeNull();
    expect(await writer.finish()).toBeNull();
    expect(given.frames.map((bytes) => [...bytes.slice(0, 4)])).toEqual([
      [255, 0, 0, 255],
      [0, 255, 0, 255],
      [0, 0, 255, 255],
    ]);
    expect(fileNames(host)).toEqual(['a.mp4']);
  });

  it('has the sound that it is given', async () => {
    const host = memoryHost({ 's.wav': 'RIFF' });
    const given = installFilmProgram(host);
    const writer = (await FilmWriter.open(host, FILE, { ...FORM, sound: '/work/s.wav' })) as FilmWriter;
    await writer.finish();
    expect(Buffer.from(given.sound!).toString()).toBe('RIFF');
    expect(given.args.join(' ')).toContain('-map 0:v -map 1:a');
  });

  it('is not there when it is dropped, and the program is ended', async () => {
    const host = memoryHost();
    const given = installFilmProgram(host);
    const writer = (await FilmWriter.open(host, FILE, FORM)) as FilmWriter;
    await writer.add(frame('#f00'));
    await writer.drop();
    expect(given.stopped).toBe(true);
    expect(fileNames(host)).toEqual([]);
  });

  it('cannot be begun in a locked folder, or without the program', async () => {
    const host = memoryHost();
    expect(await FilmWriter.open(host, FILE, FORM)).toBeNull();
    installFilmProgram(host);
    host.locked.add('/work/a.mp4');
    expect(await FilmWriter.open(host, FILE, FORM)).toEqual({
      refusal: { output: 'a.mp4', reason: 'permission denied' },
    });
    expect(fileNames(host)).toEqual([]);
  });

  test.each([
    ['av_interleaved_write_frame(): No space left on device\nConversion failed!\n', 'the disk is full'],
    ['[libx264 @ 0x5581] height not divisible by 2\n', 'ffmpeg says: height not divisible by 2'],
    ['/work/.x.tmp: Permission denied\n', 'ffmpeg says: Permission denied'],
    ['', 'ffmpeg ended before its time'],
  ])('says why it failed: %j', async (said, reason) => {
    const host = memoryHost();
    installFilmProgram(host, { after: 0, said });
    const writer = (await FilmWriter.open(host, FILE, FORM)) as FilmWriter;
    await writer.add(frame('#f00'));
    expect(await writer.add(frame('#f00'))).toEqual({ output: 'a.mp4', reason });
    expect(fileNames(host)).toEqual([]);
  });
});

describe('pictures', () => {
  const pathOf = (number: number) => ({ path: `/work/${number}.png`, name: `${number}.png` });

  it('are all there at the end', async () => {
    const host = memoryHost();
    const writer = new PictureWriter(host, pathOf);
    for (let i = 0; i < 3; i++) expect(await writer.add(frame('#f00'))).toBeNull();
    expect(await writer.finish()).toBeNull();
    expect(fileNames(host)).toEqual(['1.png', '2.png', '3.png']);
  });

  it('say which one could not be written', async () => {
    const host = memoryHost();
    host.locked.add('/work/2.png');
    const writer = new PictureWriter(host, pathOf);
    await writer.add(frame('#f00'));
    await writer.add(frame('#f00'));
    expect(await writer.finish()).toEqual({ output: '2.png', reason: 'permission denied' });
  });
});
