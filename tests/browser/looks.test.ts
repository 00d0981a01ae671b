import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { axeFindings } from './support/axe.ts';
import { inBrowser } from './support/chromium.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { HER, checks, choose, field, keptSheets, pieces, toSheet, turnTo, write } from './support/write.ts';

const WIDTHS = [360, 768, 1280];

/** The states a maker can bring the page into, each from the one before it. */
const STATES: readonly (readonly [name: string, to: (page: Page) => Promise<void>])[] = [
  ['nothing written', async () => {}],
  [
    'written on, with a question and what cannot be read',
    async (page) => {
      await write(page, 'body', { ...HER, Hip: '100 1/2', Waist: 'abc' });
      await write(page, 'yarn', { 'Four layers, how high': '1 1/8' });
      await turnTo(page, 'body');
      await page.locator('#body').getByRole('button', { name: 'It is right' }).first().waitFor();
    },
  ],
  [
    'advice with a neck that fails, everything opened',
    async (page) => {
      await write(page, 'garment', { 'A Chest, across': '20', 'J Sleeve': '18' });
      await choose(page, 'design', 'Cardigan');
      await choose(page, 'design', 'Pullover');
      await choose(page, 'design', 'Nowhere');
      await page.locator('#design summary', { hasText: 'Finer wishes' }).click();
      await write(page, 'design', { 'Neck, across': '4' });
      await toSheet(page);
      await checks(page).filter({ hasText: 'Does not work' }).first().waitFor();
      await page
        .locator('details:not([open]) > summary')
        .evaluateAll((all) => all.forEach((it) => (it as HTMLElement).click()));
      await page.getByRole('textbox', { name: /^Fabric thickness for which/ }).waitFor();
    },
  ],
  [
    'a piece finished, sheets kept, something removed',
    async (page) => {
      await turnTo(page, 'made');
      await field(page, 'made', 'Width').first().fill('22');
      await turnTo(page, 'keep');
      await page.getByRole('button', { name: 'Keep this sheet' }).click();
      await page.getByRole('region', { name: 'Side by side' }).getByRole('table').waitFor();
      await keptSheets(page).getByRole('button', { name: 'Remove' }).click();
      await page.getByRole('status').getByRole('button', { name: 'Undo', exact: true }).waitFor();
    },
  ],
];

const LEAVES = ['body', 'garment', 'yarn', 'design', 'keep', 'made'];

/** The page, and what clips what it holds, where it holds more than it is wide. */
const tooWide = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('html, main > :not([hidden]), #body li, #sheet section, #sheet section > div')]
      .filter((it) => it.checkVisibility() && it.scrollWidth > it.clientWidth)
      .map((it) => `${it.tagName} ${it.textContent?.slice(0, 40)}`),
  );

inBrowser('the look of the page', () => {
  let served: Served;
  beforeAll(async () => {
    served = await servePage();
  });
  afterAll(() => served.stop());

  for (const colorScheme of ['light', 'dark'] as const)
    it(`axe finds nothing, and nothing is wider than the screen, in every state, ${colorScheme}`, async () => {
      const page = await served.visit({ colorScheme });
      for (const [name, to] of STATES) {
        await page.setViewportSize({ width: 1280, height: 900 });
        await to(page);
        for (const width of WIDTHS) {
          await page.setViewportSize({ width, height: 800 });
          for (const leaf of LEAVES) {
            const where = `${name}, ${leaf}, ${width} px`;
            await turnTo(page, leaf);
            expect(await tooWide(page), `${where}: no sideways scrolling`).toEqual([]);
            // In the dark only colours differ.
            const findings = await axeFindings(page, colorScheme === 'light' ? 'everything' : 'contrast');
            expect(findings, where).toEqual([]);
          }
        }
      }
      quiet(served);
    }, 480_000);

  it('every target is at least 24 px in both directions, or has that much room (WCAG 2.5.8)', async () => {
    const page = await served.visit({ viewport: { width: 360, height: 800 } });
    for (const leaf of LEAVES) {
      await turnTo(page, leaf);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('button, summary, select, input[type=text], label:has(input), nav a')]
          .filter((it) => it.checkVisibility())
          .map((it) => ({ it, box: it.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 24 || box.height < 24)
          .map(({ it }) => it.outerHTML.slice(0, 120)),
      );
      expect(small, leaf).toEqual([]);
    }
  });

  it('every drawing has a title, a description and its numbers as a table', async () => {
    const page = await served.visit();
    await write(page, 'body', { ...HER });
    await toSheet(page);
    await page
      .locator('summary', { hasText: /The same in numbers|All body measures/ })
      .evaluateAll((all) => all.forEach((it) => (it as HTMLElement).click()));
    await pieces(page).getByRole('table').first().waitFor();
    const lacking = await page.evaluate(() => {
      const drawings = [...document.querySelectorAll('figure')];
      const named = drawings.filter(
        (it) => it.querySelector('title')?.textContent && it.querySelector('desc')?.textContent,
      );
      const numbered = drawings.filter(
        (it) => it.querySelector('table') ?? it.closest('#body')?.querySelector('table'),
      );
      return { drawings: drawings.length, named: named.length, numbered: numbered.length };
    });
    // On closed leaves too.
    expect(lacking.drawings).toBeGreaterThan(24);
    expect(lacking).toEqual({ drawings: lacking.drawings, named: lacking.drawings, numbered: lacking.drawings });
  });
});
