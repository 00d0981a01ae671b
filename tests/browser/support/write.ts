import type { Locator, Page } from 'playwright-core';

/** A field to write on, within a part of the page. */
export const field = (page: Page, part: string, label: string | RegExp): Locator =>
  page
    .locator(`#${part}`)
    .getByRole('textbox', typeof label === 'string' ? { name: label, exact: true } : { name: label });

export async function write(page: Page, part: string, values: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(values)) await field(page, part, label).fill(text);
}

export const choose = (page: Page, part: string, label: string): Promise<void> =>
  page.locator(`#${part}`).getByRole('radio', { name: label, exact: true }).check();

/** Waits until what is written in a part lies at the store. */
export const stored = (page: Page, part: string): Promise<void> =>
  page.locator(`#${part} .whereabouts`).getByText('Stored.', { exact: true }).waitFor();

/** A grown woman, measured by herself, in inches with fractions; invented. */
export const HER = {
  Height: '66',
  Wrist: '6 1/4',
  Hand: '7 5/8',
  Head: '22 1/8',
  Waist: '30 1/2',
  Hip: '39 1/2',
  'Upper arm': '11 1/2',
  Chest: '37 1/2',
  'Round the base of the neck': '14 3/4',
  'Nape to cuff': '29 1/4',
  'Nape to waist': '16 3/4',
  'Nape to armpit level': '7 1/4',
  'Across the back': '15 3/4',
};

export const strip = (page: Page): Locator => page.locator('.glance dl, .strip dl').filter({ visible: true });

/** Goes down to the sheet: it is drawn when she comes near it. */
export async function toSheet(page: Page): Promise<void> {
  await page.locator('.outcome-parts').scrollIntoViewIfNeeded();
  await page.locator('.piece').first().waitFor();
}
