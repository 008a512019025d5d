import fc from 'fast-check';

/** Laws try the same cases each time, so that a change is told from luck; `LAW_SEED=random` tries others. */
const SEED = process.env['LAW_SEED'] ?? '20250101';

if (SEED !== 'random') fc.configureGlobal({ seed: Number(SEED) });
