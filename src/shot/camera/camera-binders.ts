/** The binders of the camera's statements: one entry for each kind. */

import type { CameraStatement } from '../../language/tree-camera.js';
import type { Binder } from '../binding.js';
import { fieldBinders } from './bind-fields.js';
import { lightBinders } from './bind-light.js';
import { moveBinders } from './bind-moves.js';
import type { CameraNode } from './camera-draft.js';

export const cameraBinders: { readonly [K in CameraStatement['kind']]: Binder<CameraNode<K>> } = {
  ...fieldBinders,
  ...moveBinders,
  ...lightBinders,
};
