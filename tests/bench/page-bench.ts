import { chromium, type Page } from '@playwright/test';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { findBrowser } from '../browser/find-browser.ts';

const PORT = 41_731;
const ADDRESS = `http://127.0.0.1:${PORT}`;
const LESSON = `${ADDRESS}/lessons/at-the-road#step-2`;
const SLOWED = 6;
const WARM_UP = 60;
const MOVES = 120;

/** What a lesson weighs, and what dragging its figure costs: figures of one machine, with what we want of them. */
export interface PageRow {
  readonly what: string;
  readonly value: string;
  readonly aim: string;
}

/**
 * Opens a lesson of the built site in a real browser: its compressed scripts, the script time of a frame while a
 * handle is dragged with the processor slowed six times, and how much of the drawing a step of the slider changes.
 *
 * @returns undefined where there is no built site or no browser
 */
export async function benchPage(): Promise<readonly PageRow[] | undefined> {
  const executablePath = findBrowser();
  if (!executablePath || !existsSync('build/index.js')) return undefined;
  const server = spawn(process.execPath, ['build/index.js'], {
    env: { ...process.env, HOST: '127.0.0.1', PORT: String(PORT), ORIGIN: ADDRESS },
  });
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const browser = await chromium.launch({ executablePath, args });
  try {
    await Promise.race([once(server.stdout, 'data'), once(server, 'exit')]);
    const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    const weight = await weighed(page);
    const frames = await scriptInFrames(page);
    const changes = await changesInStep(page);
    return [
      { what: 'compressed scripts of a lesson', value: `${weight.toFixed(1)} kB`, aim: '≤ 90 kB' },
      {
        what: `script in a frame of a drag, processor slowed ${SLOWED} times`,
        value: `${share(frames, 0.5)} ms in the middle, ${share(frames, 0.95)} ms for 95 of 100`,
        aim: '< 8 ms',
      },
      { what: 'changes to the page in a step of the slider', value: String(changes), aim: '≤ 40' },
    ];
  } finally {
    await browser.close();
    server.kill();
  }
}

/** The scripts that a first visit fetches, each compressed as our server sends it (brotli), in kB. */
async function weighed(page: Page): Promise<number> {
  const sizes: Promise<number>[] = [];
  page.on('response', (response) => {
    if (!response.url().endsWith('.js') || response.url().endsWith('service-worker.js')) return;
    sizes.push(response.body().then((body) => brotliCompressSync(body).length));
  });
  await page.goto(LESSON, { waitUntil: 'networkidle' });
  return (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0) / 1000;
}

/** Script time of each frame in ms, while the lower pivot is dragged to and fro, a move a frame, once warm. */
async function scriptInFrames(page: Page): Promise<readonly number[]> {
  const session = await page.context().newCDPSession(page);
  // The thread's own time: what else the machine does meanwhile is left out.
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const scripted = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? NaN);
  };
  const grip = page.locator('[role=slider][data-parameter] .hit').first();
  const box = await grip.boundingBox();
  if (!box) throw new Error('the lesson has no handle to drag');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  // Sent past Playwright's own mouse, which listens in the page while it drags.
  const mouse = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', at: number) =>
    session.send('Input.dispatchMouseEvent', {
      type,
      x: at,
      y,
      button: 'left',
      buttons: 1,
      clickCount: 1,
    });
  const framesOfMoves = async (): Promise<readonly number[]> => {
    const frames: number[] = [];
    for (let move = 0; move < WARM_UP + MOVES; move++) {
      const before = await scripted();
      await mouse('mouseMoved', x + 20 * Math.sin(move / 6));
      await page.evaluate(() => new Promise(requestAnimationFrame));
      frames.push((await scripted()) - before);
    }
    return frames.slice(WARM_UP);
  };
  // Waiting for a frame costs script of its own, which readers never run: what moves over nothing cost is taken off.
  const waiting = middle(await framesOfMoves());
  await mouse('mousePressed', x);
  const frames = await framesOfMoves();
  await mouse('mouseReleased', x);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return frames.map((time) => time - waiting);
}

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;

/** What so large a share of the values stays below, to a tenth. */
function share(values: readonly number[], part: number): string {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[Math.floor(part * (sorted.length - 1))] ?? NaN).toFixed(1);
}

/** How many nodes and attributes one step of a slider changes. */
async function changesInStep(page: Page): Promise<number> {
  const slider = page.locator('.figure input[type=range]').first();
  await slider.focus();
  await page.evaluate(() => {
    const seen = { count: 0 };
    Object.assign(window, { seen });
    new MutationObserver((records) => (seen.count += records.length)).observe(document.body, {
      attributes: true,
      characterData: true,
      childList: true,
      subtree: true,
    });
  });
  await page.keyboard.press('ArrowRight');
  await page.evaluate(() => new Promise(requestAnimationFrame));
  return page.evaluate(() => (window as unknown as { seen: { count: number } }).seen.count);
}
