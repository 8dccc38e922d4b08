import { defineConfig } from 'vitest/config';
import base from './vitest.config.ts';

/** The tests for a mutation run: those that compute, without types, which a mutant does not keep. */
export default defineConfig({
  ...base,
  test: {
    include: [
      'tests/{film,mix,cure,batch,scenarios}/**/*.test.ts',
      'tests/meta/{answers,check-values,bad-input,monotone}.test.ts',
    ],
    env: { FOLDERS: 'film,mix,cure,batch' },
    // Instrumented code is slow, and slower still on a busy machine.
    testTimeout: 60_000,
    typecheck: { enabled: false },
  },
});
