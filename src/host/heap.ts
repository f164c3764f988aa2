import { setFlagsFromString } from 'node:v8';

/**
 * Lets V8 collect garbage when the heap is half again as large as what is in use. By itself it waits until it is four times as
 * large, so a run over thousands of cuts, of which each is done with at once, would take as much memory as they leave behind.
 */
export function keepHeapSmall(): void {
  setFlagsFromString('--heap-growing-percent=50');
}
