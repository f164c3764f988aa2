import { type Canvas, createCanvas, type SKRSContext2D } from '@napi-rs/canvas';

/** What the painter asks for where masks cut something out. */
export function scratch({ width, height }: { readonly width: number; readonly height: number }): () => {
  readonly context: SKRSContext2D;
  readonly image: Canvas;
} {
  const image = createCanvas(width, height);
  return () => ({ context: image.getContext('2d'), image });
}
