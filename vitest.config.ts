import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [sveltekit()],
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/every-value.ts', 'tests/law-seed.ts'],
    env: { TZ: 'UTC', LANG: 'en_GB.UTF-8' },
    // Laws try many cases, and no test asserts a time: a busy machine may take long.
    testTimeout: 120_000,
  },
});
