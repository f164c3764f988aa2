import type { Host } from '../host/host.js';

/** One call of the program: the world that it runs in, and the status that it leaves with. */
export interface Run {
  readonly host: Host;
  status: number;
}
