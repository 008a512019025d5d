import { expect, test } from '@playwright/test';
import { throughSteps } from './lesson-steps.ts';
import { pdfText } from './pdf-text.ts';
import { LESSONS, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

for (const lesson of LESSONS) {
  test(`${lesson.slug} prints all its steps, with every number, black on white and nothing cut off`, async ({
    page,
  }) => {
    await throughSteps(page, lesson, () => Promise.resolve());
    const file = await page.pdf({ format: 'A4' });
    const text = pdfText(file);

    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    for (const number of lesson.steps.keys())
      await expect(page.locator(`#step-${number + 1}`)).toBeVisible();
    for (const gone of [
      'body > div > header',
      'footer',
      '.onward',
      '.rail',
      'button',
      'input[type=range]',
    ])
      await expect(page.locator(gone).filter({ visible: true }), gone).toHaveCount(0);
    const numbers = await page
      .locator('.step .value, .step .reading, figure text, [data-figure] .value')
      .evaluateAll((values) =>
        values
          // Exercises are still being drawn while the page is printed; sheets are how these come on paper.
          .filter((value) => value.checkVisibility() && !value.closest('form, .example'))
          .map((value) => value.textContent),
      );
    expect(numbers.length).toBeGreaterThan(lesson.steps.length);
    const missing = numbers.filter((number) => !text.includes(number.replaceAll(/\s/g, '')));
    expect(missing).toEqual([]);

    const colours = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.body);
      const paper = document.querySelector('.figure svg') ?? document.body;
      return [color, backgroundColor, getComputedStyle(paper).backgroundColor];
    });
    expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'rgb(255, 255, 255)']);
    // A sheet of A4 with Chromium's own margins is about 717 pixels wide.
    await page.setViewportSize({ width: 717, height: 1000 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  });
}

for (const format of ['A4', 'Letter']) {
  test(`the formula sheet prints on one page of ${format}, every formula with its words`, async ({
    page,
  }) => {
    await visit(page, '/formulas');
    const said = await page.locator('.gives, dd').allInnerTexts();
    expect(said.length).toBeGreaterThan(30);
    const file = await page.pdf({ format });
    expect(file.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
    const text = pdfText(file);
    const words = said.map((one) => one.replaceAll(/\s/g, ''));
    expect(words.filter((one) => !text.includes(one))).toEqual([]);
  });
}
