/**
 * The part of the standard Canvas 2D interface that the painter uses. `CanvasRenderingContext2D` of browsers satisfies it, and so does
 * the context of `@napi-rs/canvas`. `I`: what the canvas takes for an image.
 */
export interface Canvas2D<I> {
  globalAlpha: number;
  globalCompositeOperation: string;
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  font: string;
  textAlign: string;
  textBaseline: string;
  shadowColor: string;
  shadowBlur: number;
  imageSmoothingEnabled: boolean;
  imageSmoothingQuality: string;
  save(): void;
  restore(): void;
  setTransform(a: number, b: number, c: number, d: number, e: number, f: number): void;
  beginPath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  arc(x: number, y: number, radius: number, from: number, to: number, counterClockwise: boolean): void;
  fill(): void;
  rect(x: number, y: number, width: number, height: number): void;
  clip(): void;
  stroke(): void;
  clearRect(x: number, y: number, width: number, height: number): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  strokeRect(x: number, y: number, width: number, height: number): void;
  fillText(text: string, x: number, y: number): void;
  strokeText(text: string, x: number, y: number): void;
  measureText(text: string): { readonly width: number };
  drawImage(image: I, x: number, y: number, width: number, height: number): void;
}
