import type { Locator, Page } from 'playwright-core';

/** A field to write on, within a part of the page. */
export const field = (page: Page, part: string, label: string | RegExp): Locator =>
  page
    .locator(`#${part}`)
    .getByRole('textbox', typeof label === 'string' ? { name: label, exact: true } : { name: label });

/** Parts that are not the first of their leaf. */
const ON_LEAF: Readonly<Record<string, string>> = { sheet: 'design', send: 'keep' };

/** The way to the leaf that a part of the page is on. */
export const wayTo = (page: Page, part: string): Locator =>
  page.getByRole('navigation', { name: 'Leaves of the notebook' }).locator(`a[href="#${ON_LEAF[part] ?? part}"]`);

/** Turns to the leaf that a part of the page is on, where it does not lie open. */
export async function turnTo(page: Page, part: string): Promise<void> {
  if (!(await page.locator(`#${part}`).isVisible())) await wayTo(page, part).click();
}

export async function write(page: Page, part: string, values: Readonly<Record<string, string>>): Promise<void> {
  await turnTo(page, part);
  for (const [label, text] of Object.entries(values)) await field(page, part, label).fill(text);
}

export async function choose(page: Page, part: string, label: string): Promise<void> {
  await turnTo(page, part);
  await page.locator(`#${part}`).getByRole('radio', { name: label, exact: true }).check();
}

/** What the numbers are reckoned from, which is folded away. */
export async function chooseBasis(page: Page, label: string): Promise<void> {
  await turnTo(page, 'design');
  const basis = page.locator('#design').getByLabel('Reckoned from');
  if (!(await basis.isVisible())) await page.locator('#design summary', { hasText: 'Finer wishes' }).click();
  await basis.selectOption(label);
}

/** Where the open body, garment or yarn is stored, in words. */
export const storageStatus = (page: Page, part: string): Locator =>
  page.locator(`#${part}`).getByRole('status').first();

/** The drawn pieces of the sheet. */
export const pieces = (page: Page): Locator =>
  page.getByRole('region', { name: 'The pieces, to scale' }).getByRole('figure');

/** The checks of the sheet, each an item of a list. */
export const checks = (page: Page): Locator => page.locator('#checks').getByRole('listitem');

/** The kept sheets, each an item of a list. */
export const keptSheets = (page: Page): Locator =>
  page.getByRole('list', { name: 'Kept sheets' }).getByRole('listitem');

/** Waits until what is entered in a part is stored. */
export async function stored(page: Page, part: string): Promise<void> {
  await turnTo(page, part);
  await storageStatus(page, part).getByText('Stored.', { exact: true }).waitFor();
}

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

export const strip = (page: Page): Locator => page.getByRole('complementary').locator('dl').filter({ visible: true });

/** Turns to the sheet and goes down to its pieces: it is fetched when it is first wanted. */
export async function toSheet(page: Page): Promise<void> {
  await turnTo(page, 'sheet');
  await page.locator('#pieces-title').scrollIntoViewIfNeeded();
  await pieces(page).first().waitFor();
}
