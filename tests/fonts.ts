import { shippedFont } from '../src/host/shipped-files.js';
import { type Fonts, openFonts } from '../src/print/fonts.js';

let opened: Fonts | undefined;

/** The shipped fonts, opened once for the tests of a file. */
export function testFonts(): Fonts {
  opened ??= freshFonts();
  return opened;
}

export function freshFonts(): Fonts {
  return openFonts({ read: bytesOf, latin: null });
}

export function bytesOf(weight: 'regular' | 'bold'): Uint8Array {
  const reading = shippedFont(weight);
  if (!reading.ok) throw new Error(`the ${weight} font ${reading.reason}`);
  return reading.value;
}
