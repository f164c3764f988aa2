/** The binders of the camera's statements: one entry for each kind. */

import type { CameraStatement } from '../../language/tree-camera.js';
import type { Binder } from '../binding.js';
import { moveBinders } from './bind-moves.js';
import type { CameraNode } from './draft.js';
import { fieldBinders } from './fields.js';
import { lightBinders } from './light.js';

export const cameraBinders: { readonly [K in CameraStatement['kind']]: Binder<CameraNode<K>> } = {
  ...fieldBinders,
  ...moveBinders,
  ...lightBinders,
};
