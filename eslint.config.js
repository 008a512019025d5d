import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import typescript from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

const UNSAFE_OFF = /** @type {const} */ ({
  '@typescript-eslint/no-unsafe-argument': 'off',
  '@typescript-eslint/no-unsafe-assignment': 'off',
  '@typescript-eslint/no-unsafe-call': 'off',
  '@typescript-eslint/no-unsafe-member-access': 'off',
  '@typescript-eslint/no-unsafe-return': 'off',
});

// Looks for mistakes; the layout of the code is Prettier's business.
export default defineConfig(
  globalIgnores(['build/', 'build-static/', '.svelte-kit/', 'test-results/', 'coverage/']),
  js.configs.recommended,
  typescript.configs.strictTypeChecked,
  typescript.configs.stylisticTypeChecked,
  svelte.configs.recommended,
  svelte.configs.prettier,
  {
    linterOptions: { reportUnusedDisableDirectives: 'error', reportUnusedInlineConfigs: 'error' },
    languageOptions: {
      globals: { ...globals.browser, ...globals.node },
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      eqeqeq: 'error',
      // TypeScript finds undefined names itself, and knows more of them.
      'no-undef': 'off',
      // A number reads the same in a message with or without String() around it.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // Interfaces for records, types for unions and functions: both have their place.
      '@typescript-eslint/consistent-type-definitions': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: typescript.parser, svelteConfig } },
  },
  {
    // The linter takes what comes out of other components for `any`; svelte-check knows its type.
    files: ['**/*.svelte'],
    rules: UNSAFE_OFF,
  },
  {
    // What is replaced is the state of the page that one is on, so its address needs no resolving.
    files: ['**/*.svelte', '**/*.svelte.ts'],
    rules: { 'svelte/no-navigation-without-resolve': ['error', { ignoreReplaceState: true }] },
  },
  {
    files: ['src/{core,exercises,scenes}/**/*.ts'],
    rules: {
      'no-console': 'error',
      'no-param-reassign': ['error', { props: true }],
    },
  },
  {
    // Plain JavaScript is what runs before anything is installed, and reads JSON that it trusts; in
    // its doc comments `any` is the only way to say so.
    files: ['**/*.js', '**/*.mjs'],
    rules: {
      ...UNSAFE_OFF,
      '@typescript-eslint/prefer-nullish-coalescing': 'off',
      '@typescript-eslint/restrict-plus-operands': 'off',
    },
  },
  {
    // The framework calls its own settings for the folders deprecated, and offers no others.
    files: ['svelte.config.js'],
    rules: { '@typescript-eslint/no-deprecated': 'off' },
  },
);
