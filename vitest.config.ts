import { createRequire } from 'node:module';
import { defineConfig } from 'vitest/config';
import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with a line of its own, `123 passed, 0 failed`. A file that could not be run at all counts as a failure. */
const count: Reporter = {
  onTestRunEnd(modules: readonly TestModule[], errors) {
    let passed = 0;
    let failed = errors.length;
    for (const module of modules) {
      if (module.errors().length > 0) failed++;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed++;
        if (state === 'failed') failed++;
      }
    }
    process.stdout.write(`${passed} passed, ${failed} failed\n`);
  },
};

const { sourcesHash } = createRequire(import.meta.url)('./scripts/sources-hash.cjs') as {
  sourcesHash: () => string;
};

process.env.CUTWRIGHT_SOURCES = sourcesHash();

export default defineConfig({
  define: { CUTWRIGHT_SOURCES: JSON.stringify(process.env.CUTWRIGHT_SOURCES) },
  test: {
    // Two tiers, told apart by the file's name: `npm test` runs the first, `npm run test:all` both.
    projects: [
      {
        extends: true,
        test: { name: 'quick', include: ['tests/**/*.test.ts'], exclude: ['tests/**/*.slow.test.ts'] },
      },
      {
        extends: true,
        test: { name: 'slow', include: ['tests/**/*.slow.test.ts'], globalSetup: 'tests/bundle.setup.ts' },
      },
    ],
    setupFiles: 'tests/seed.setup.ts',
    // Files share a process and what it has loaded: the parser and the fonts are made ready twice in a run, not 200 times.
    isolate: false,
    unstubEnvs: true,
    // One more than it would take by itself on the two cores that CI has.
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    reporters: ['default', count],
  },
});
