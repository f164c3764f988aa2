/** What binding gathers of the camera, before it is put in order. */

import type { CameraStatement } from '../../language/tree-camera.js';
import type { Field, Light, Move } from './camera-model.js';

export type CameraNode<K extends CameraStatement['kind']> = CameraStatement & { readonly kind: K };

export interface CameraDraft {
  /** The cut's own `field` statements, in the order of writing. */
  readonly named: Map<string, CameraNode<'field'>>;
  /** Those of used files. */
  readonly shared: Map<string, CameraNode<'field'>>;
  /** Fields made so far: each once, so that moves that name one share it. */
  readonly made: Map<string, Field>;
  fix: CameraNode<'fix'> | null;
  readonly moves: Move[];
  readonly light: Light[];
}

export function startCamera(): CameraDraft {
  return { named: new Map(), shared: new Map(), made: new Map(), fix: null, moves: [], light: [] };
}
