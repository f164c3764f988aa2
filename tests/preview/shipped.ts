import { nodeHost } from '../../src/host/node-host.js';
import type { ShippedFiles } from '../../src/preview/preview-server.js';

/** The page as it is shipped, with a font of these bytes. */
export function shipped(font = new Uint8Array()): ShippedFiles {
  const host = nodeHost();
  return {
    font: () => font,
    page(name) {
      const bytes = host.livePage(name);
      if (!bytes.ok) throw new Error(bytes.reason);
      return bytes.value;
    },
  };
}
