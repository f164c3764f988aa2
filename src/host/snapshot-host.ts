import type { Host, Reading } from './host.js';

/** No run of a program that prints writes one. */
const TEXT = /\.(cut|ya?ml)$/i;

/**
 * The same world, each file of which is read once: a run that takes seconds prints one state of it, whatever is saved meanwhile. Not
 * for files that the run itself writes.
 */
export function snapshot(base: Host): Host {
  const readings = new Map<string, Reading<Uint8Array>>();
  const reals = new Map<string, string>();
  return {
    ...base,
    read(path) {
      const known = readings.get(path) ?? base.read(path);
      readings.set(path, known);
      return known;
    },
    real(path) {
      if (!TEXT.test(path)) return base.real(path);
      const known = reals.get(path) ?? base.real(path);
      reals.set(path, known);
      return known;
    },
  };
}
