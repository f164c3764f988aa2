/** A drawing on paper as light that shines through it: where it has ink there is light, and the paper is dark. */

/** The colour of the light: that of a lamp. */
const LIGHT = [255, 243, 200] as const;

/** Changes pixels in place: RGBA, one byte each, as a canvas gives them. */
export function lightOfInk(pixels: Uint8ClampedArray): void {
  for (let i = 0; i < pixels.length; i += 4) {
    // Luma after ITU-R BT.709.
    const luma = 0.2126 * pixels[i]! + 0.7152 * pixels[i + 1]! + 0.0722 * pixels[i + 2]!;
    const ink = (1 - luma / 255) * pixels[i + 3]!;
    for (let k = 0; k < 3; k++) pixels[i + k] = LIGHT[k]!;
    pixels[i + 3] = ink;
  }
}
