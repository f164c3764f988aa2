import type { Command } from 'commander';
import type { Host } from '../host/host.js';

/** One call of the program: the world that it runs in, and the status that it leaves with. */
export interface Run {
  readonly host: Host;
  status: number;
  /** Every command of the program with its options, made when it is asked for. */
  readonly commands: () => Promise<readonly Command[]>;
}
