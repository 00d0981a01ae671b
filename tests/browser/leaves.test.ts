import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { eachVisit, type Served } from './support/open-page.ts';
import { HER, checks, choose, field, strip, toSheet, turnTo, wayTo, write } from './support/write.ts';

const PARTS = ['body', 'garment', 'yarn', 'design', 'sheet', 'keep', 'send', 'made'];

inBrowser('the leaves of the notebook', () => {
  let served: Served;
  let page: Page;
  eachVisit((...at) => void ([page, served] = at), { viewport: { width: 360, height: 740 } });

  const open = async (): Promise<string> => {
    const seen = await Promise.all(PARTS.map((part) => page.locator(`#${part}`).isVisible()));
    return PARTS.filter((_, i) => seen[i]).join(' ');
  };
  const active = (): Promise<string> => page.evaluate(() => document.activeElement?.id ?? '');
  /** How far the top of a part is from the top of the screen. */
  const topOf = async (part: string): Promise<number> => (await page.locator(`#${part}`).boundingBox())?.y ?? NaN;
  const atTheEnd = (): Promise<boolean> =>
    page.evaluate(() => scrollY + innerHeight >= document.documentElement.scrollHeight - 1);

  it('are reached with one tap each, and the design opens together with the sheet', async () => {
    expect(await open()).toBe('body');
    await page.locator('#measure-scye-depth').scrollIntoViewIfNeeded();
    for (const [leaf, parts] of [
      ['garment', 'garment'],
      ['keep', 'keep send'],
      ['design', 'design sheet'],
      ['made', 'made'],
      ['yarn', 'yarn'],
      ['body', 'body'],
    ] as const) {
      await wayTo(page, leaf).click();
      await soon(open).toBe(parts);
      expect(await wayTo(page, leaf).getAttribute('aria-current')).toBe('page');
      // What was turned to begins right below the way to the leaves, where it is long enough.
      await soon(async () => (await topOf(leaf)) < 120 || (await atTheEnd())).toBe(true);
    }
  });

  it('follow the browser’s back and forward', async () => {
    await wayTo(page, 'yarn').click();
    await wayTo(page, 'design').click();
    await page.goBack();
    await soon(open).toBe('yarn');
    await page.goBack();
    await soon(open).toBe('body');
    await page.goForward();
    await soon(open).toBe('yarn');
  });

  it('stay open over a reload, and have an address each', async () => {
    await wayTo(page, 'keep').click();
    await page.reload();
    await soon(open).toBe('keep send');
    await page.goto(`${served.address}#sheet`);
    await soon(open).toBe('design sheet');
    await page.goto('about:blank');
    await page.goto(`${served.address}#measure-wrist-girth`);
    await soon(open).toBe('body');
  });

  it('each end with a link to the next', async () => {
    for (const parts of ['garment', 'yarn', 'design sheet', 'keep send', 'made']) {
      await page.getByRole('link', { name: /^Next: / }).click();
      expect(await open()).toBe(parts);
    }
  });

  it('open where a check asks for a measurement, and its field has the focus', async () => {
    const { Hand: _, ...rest } = HER;
    await write(page, 'body', rest);
    await choose(page, 'body', 'stays open');
    await toSheet(page);
    const asks = checks(page).getByRole('link', { name: 'Measure: Hand' }).first();
    await asks.click();
    expect(await open()).toBe('body');
    await soon(active).toBe('measure-hand-girth');
    await soon(() => topOf('body')).toBeLessThan(0);
    await page.goBack();
    await soon(open).toBe('design sheet');
  });

  it('open where the browser’s search finds something', async () => {
    // As the browser’s own search does it, before it shows what it has found.
    await page
      .locator('#garment')
      .evaluate((it) => it.parentElement?.dispatchEvent(new Event('beforematch', { bubbles: true })));
    expect(await open()).toBe('garment');
    expect(new URL(page.url()).hash).toBe('#garment');
    await page.goBack();
    await soon(open).toBe('body');
  });

  it('do not render while they are closed, and are up to date once they are opened', async () => {
    await write(page, 'body', HER);
    await toSheet(page);
    await turnTo(page, 'body');
    await page.evaluate(() => {
      const count = { changes: 0 };
      Object.assign(window, { count });
      const watch = new MutationObserver((records) => (count.changes += records.length));
      const all = { subtree: true, childList: true, characterData: true, attributes: true };
      for (const leaf of document.querySelectorAll('main > [hidden]')) watch.observe(leaf, all);
    });
    const before = await strip(page).innerText();
    await field(page, 'body', 'Chest').fill('41 in');
    await soon(() => strip(page).innerText()).not.toBe(before);
    expect(await page.evaluate(() => (window as unknown as { count: { changes: number } }).count.changes)).toBe(0);
    await wayTo(page, 'design').click();
    const width = /Chest, flat\n(.*)/.exec(await strip(page).innerText())?.[1];
    const told = page.locator('#sheet summary', { hasText: 'Chest width' }).first().locator('span').nth(1);
    await soon(() => told.textContent()).toBe(width);
  });

  it('update the sheet in the frame of a change to the design', async () => {
    await write(page, 'body', HER);
    await turnTo(page, 'design');
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
    const [before, after] = await page.evaluate(() => {
      const said = (): string => document.querySelector('main ~ aside dl')?.textContent ?? '';
      const loose = [...document.querySelectorAll<HTMLElement>('#design label')].find((it) => it.innerText === 'Loose');
      const before = said();
      loose?.click();
      return [before, said()];
    });
    expect(after).not.toBe(before);
  });

  it('leave room for the sheet when the numbers of the outline are open beside the design', async () => {
    await write(page, 'body', HER);
    await page.setViewportSize({ width: 1280, height: 800 });
    await toSheet(page);
    const glance = page.getByRole('complementary', { name: 'The sweater on the body' });
    const lengths = glance.locator('dl');
    const before = await lengths.boundingBox();
    await glance.locator('summary').click();
    await glance.locator('table').waitFor();
    expect(await lengths.boundingBox()).toEqual(before);
    const checks = page.locator('#checks-title');
    for (const [width, height] of [
      [1100, 720],
      [1280, 800],
      [1440, 900],
    ] as const) {
      await page.setViewportSize({ width, height });
      // A quarter of the screen: room enough to read in.
      const room = await page.locator('div:has(> #sheet)').evaluate((it) => it.clientHeight);
      expect(room).toBeGreaterThan(height / 4);
      await checks.evaluate((it) => it.scrollIntoView());
      const [top, card] = [(await checks.boundingBox())?.y ?? 0, await glance.boundingBox()];
      expect(top).toBeGreaterThanOrEqual((card?.y ?? NaN) + (card?.height ?? NaN));
      expect(top).toBeLessThan(height);
    }
  });

  it('can be reached by keyboard alone', async () => {
    const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.textContent ?? '');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('Straight to the sheet');
    await page.keyboard.press('Enter');
    expect(await open()).toBe('design sheet');
    await page.goBack();
    for (let i = 0; i < 8 && (await focused()) !== 'Yarn'; i++) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await open()).toBe('yarn');
    await page.keyboard.press('Tab');
    expect(await field(page, 'yarn', 'Yarn or swatch').evaluate((it) => it === document.activeElement)).toBe(true);
  });
});
