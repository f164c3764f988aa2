/** Words that a Japanese of the trade writes in Latin letters: on paper, of files and formats, units. */
const LATIN = new Set(
  `No PAN T.U T.B O.L F.I F.O BG BOOK SE OFF FIX WXP mm m cm in deg dpi kB MB fps
  UTF WAV RIFX MP3 FLAC Ogg AIFF M4A CAF AU Wave64 AVI MIDI RF64 dB PNG JPEG WebP JSON CSV PDF EDL YAML NUL BELL MIT npm git ffmpeg Debian Ubuntu CSS Easing cubic bezier WCAG ITU BT REV PATH
  cutwright episode.yaml .cut .pdf .csv .json .png`
    .split(/\s+/)
    .flatMap((word) => word.split('.')),
);

/** English words of a Japanese text, but for what is typed (in backticks), what the trade writes in Latin letters, and what stands in `given`. */
export function englishIn(text: string, given: string): string[] {
  const plain = text.replace(/`[^`]*`/g, ' ');
  return [...plain.matchAll(/(?<![+\d])[A-Za-z][A-Za-z']+\d*/g)]
    .map(([word]) => word)
    .filter((word) => !LATIN.has(word) && !given.includes(word));
}
