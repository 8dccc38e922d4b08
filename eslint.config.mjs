import jsdoc from 'eslint-plugin-jsdoc';
import tsdoc from 'eslint-plugin-tsdoc';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

export default defineConfig(
  { ignores: ['dist', 'site', 'coverage', 'tests/generated', 'temp'] },
  {
    files: ['src/**/*.ts', 'tests/**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: { project: './tsconfig.test.json', tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // Whatever a caller without types hands over can be shown; objects are described before.
      '@typescript-eslint/no-base-to-string': 'off',
      '@typescript-eslint/class-literal-property-style': 'off',
      '@typescript-eslint/non-nullable-type-assertion-style': 'off',
    },
  },
  {
    files: ['src/**/*.ts'],
    plugins: { tsdoc, jsdoc },
    settings: { jsdoc: { mode: 'typescript' } },
    rules: {
      'tsdoc/syntax': 'error',
      'jsdoc/require-jsdoc': [
        'error',
        { publicOnly: true, contexts: ['TSInterfaceDeclaration', 'TSTypeAliasDeclaration'] },
      ],
      'jsdoc/require-description': ['error', { contexts: ['any'] }],
      // Pure: no clock, no random numbers, no locale of the machine, no environment.
      'no-restricted-globals': ['error', 'process', 'window', 'document', 'fetch', 'performance'],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now' },
        { object: 'Math', property: 'random' },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'no clock' },
      ],
    },
  },
);
