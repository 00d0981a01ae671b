import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { eachVisit } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { choose, chooseBasis, strip, turnTo, write } from './support/write.ts';

inBrowser('the measurement to take next', () => {
  let page: Page;
  eachVisit((to) => void (page = to));

  const next = () => page.getByRole('complementary', { name: 'Worth taking next' }).innerText();

  it('is an easy one where nothing is entered', async () => {
    await strip(page).or(page.getByText('Nothing to reckon with yet.').first()).first().waitFor();
    expect(await next()).toMatch(/^Begin with what is easy\./);
  });

  it('is a child’s chest while all numbers come from a table', async () => {
    await choose(page, 'body', 'a child');
    await write(page, 'body', { 'Age in years': '4' });
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
    await soon(next).toBe('Worth taking next: Chest. Until then it is only guessed.');
    await write(page, 'body', { Chest: '58' });
    await soon(next).toMatch(/sure to ± [\d.]+ cm instead of/);
  });

  it('is the chest where there is no sheet without it', async () => {
    await choose(page, 'body', 'stays open');
    await write(page, 'body', { Height: '168' });
    await soon(next).toBe('Worth taking next: Chest. Nothing can be said without it.');
    await write(page, 'body', { Chest: '94' });
    await soon(next).toMatch(/Without it the sheet has gaps\.$/);
  });

  it('does not say to begin while the sweater that is the basis has no width', async () => {
    await write(page, 'body', { Chest: '94' });
    await chooseBasis(page, 'the sweater, not compared with the body');
    await turnTo(page, 'body');
    await soon(next).toMatch(/^Begin with what is easy\./);
    await write(page, 'garment', { 'A Chest, across': '50' });
    await turnTo(page, 'body');
    await soon(next).toMatch(/^Nothing you skipped would change much\./);
  });
});
