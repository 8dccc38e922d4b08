import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: {
    alias: [
      { find: /^coating-math$/, replacement: `${import.meta.dirname}/src/index.ts` },
      { find: /^coating-math\/shared\/(.*)$/, replacement: `${import.meta.dirname}/shared/$1` },
      { find: /^coating-math\/(\w+)$/, replacement: `${import.meta.dirname}/src/$1/index.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    // The totals of a run on a server are read from this file.
    reporters: process.env['CI'] ? ['default', ['json', { outputFile: 'temp/tests.json' }]] : ['default'],
    typecheck: {
      enabled: true,
      include: ['tests/**/*.test-d.ts'],
      tsconfig: './tsconfig.test.json',
      checker: 'tsc',
    },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: { statements: 100, lines: 100, functions: 100, branches: 98 },
    },
  },
});
