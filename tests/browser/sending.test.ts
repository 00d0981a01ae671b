import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { exampleBody } from '../support/examples.ts';
import { RealPlanner, verified } from '../support/real-planner.ts';
import { axeFindings } from './support/axe.ts';
import { inBrowser } from './support/chromium.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { turnTo } from './support/write.ts';

inBrowser('sending a sheet', () => {
  let served: Served;
  let page: Page;
  let planner: RealPlanner;
  beforeAll(async () => {
    served = await servePage({ HANDOFF_ALLOW: 'loopback' });
    planner = await RealPlanner.start();
  });
  beforeEach(async () => {
    await served.empty();
    planner.answersWith();
  });
  afterEach(async () => {
    quiet(served);
    await page.context().close();
  });
  afterAll(async () => {
    await served.stop();
    await planner.stop();
  });

  const part = () => page.locator('#send');
  const button = (name: string | RegExp) => part().getByRole('button', { name });
  const fill = (label: string, text: string) => part().getByRole('textbox', { name: label, exact: true }).fill(text);

  /** Comes to the part with a sheet at the store. */
  const open = async (body: object = exampleBody) => {
    const { id } = await keepExampleSheet(served.app, body);
    page = await served.visit();
    await turnTo(page, 'send');
    await button('Set up a planner').click();
    return id;
  };
  const name = async (index: number, ours: string, theirs: string, required = false) => {
    await button('Name one more thing').click();
    const row = part().getByRole('group', { name: 'What it calls things' }).getByRole('listitem').nth(index);
    await row.getByRole('combobox', { name: 'In the sheet' }).selectOption({ label: ours });
    await row.getByRole('textbox', { name: 'Its field' }).fill(theirs);
    if (required) await row.getByRole('checkbox', { name: 'cannot do without' }).check();
  };
  const setUp = async () => {
    await fill('Name of the planner', 'Row by row');
    await fill('Its address', planner.address);
    await part().getByRole('radio', { name: 'inches' }).check();
    await fill('Rounded to', '1/4');
    await name(0, 'Back: Width', '/panel/w', true);
    await name(1, 'Sleeve: Sleeve length, whole', '/sleeve/0', true);
  };
  const leaving = () => part().getByRole('textbox', { name: /^What would leave/ });
  const secretShown = async () => {
    const field = part().getByRole('textbox', { name: 'Signing secret' });
    await field.waitFor();
    return field.inputValue();
  };

  it('delivers the previewed payload, signed, to a planner with its own names', async () => {
    await open();
    await setUp();
    expect(await axeFindings(page)).toEqual([]);
    await button('Set it up').click();
    const secret = await secretShown();
    expect(secret).toMatch(/^whsec_/);
    // p 510.9 mm = 20.11 in → 20; the sleeve 19.19 + 0.06 → 19.25 (model, worked example 1).
    await soon(() => leaving().inputValue()).toBe('{"panel":{"w":20},"sleeve":[19.25]}');
    await button('Send to Row by row').click();
    await part().getByText('arrived').waitFor();
    const received = planner.received.at(-1);
    expect(received?.body).toBe(await leaving().inputValue());
    expect(received && verified(received, secret)).toEqual({ panel: { w: 20 }, sleeve: [19.25] });
    await part().getByText('One try').click();
    expect(await part().getByRole('row').nth(1).innerText()).toMatch(/answered 200/);
    expect(await axeFindings(page)).toEqual([]);
    await page.reload();
    await part().getByText('arrived').waitFor();
    expect(await part().innerText()).not.toContain(secret);
  });

  it('shows a hand-off that was given up, and resends it', async () => {
    planner.answersWith({ status: 410 });
    await open();
    await setUp();
    await button('Set it up').click();
    await secretShown();
    await button('Send to Row by row').click();
    await part().getByText('not delivered').waitFor();
    await part().getByText('One try').click();
    expect(await part().getByRole('row').nth(1).innerText()).toMatch(/answered 410/);
    // The planner wanted nothing more: it is asked to go on, then the same hand-off is sent again.
    await page.reload();
    await button('Go on').click();
    await button('Send again').click();
    await part().getByText('arrived').waitFor();
    await part().getByText('2 tries').waitFor();
    const ids = planner.received.slice(-2).map(({ headers }) => headers['webhook-id']);
    expect(ids[0]).toBe(ids[1]);
  });

  it('refuses a planner whose required fields are missing, and says which measurement to take', async () => {
    const measures = exampleBody.measures.filter(({ name: measure }) => measure !== 'neck-base-girth');
    await open({ ...exampleBody, estimate: false, measures });
    await setUp();
    await name(2, 'Finished: Neck width', '/neck', true);
    await button('Set it up').click();
    await part().getByText('It cannot be sent to this planner:').waitFor();
    await part()
      .getByText(/assembled\/neck-width: .*Measure neck-base-girth\./)
      .waitFor();
    expect(await button('Send to Row by row').isDisabled()).toBe(true);
  });

  it('rejects an invalid address, reports each error, and loses nothing that was entered', async () => {
    await open();
    await setUp();
    await fill('Its address', 'http://planner.example/');
    await part()
      .getByRole('group', { name: 'What it calls things' })
      .getByRole('listitem')
      .first()
      .getByRole('textbox')
      .fill('no slash');
    await button('Set it up').click();
    await part().getByText('The address must start with https://').waitFor();
    await part()
      .getByText(/must start with a slash/)
      .waitFor();
    await page.reload();
    await button('Set up a planner').click();
    expect(await part().getByRole('textbox', { name: 'Name of the planner' }).inputValue()).toBe('Row by row');
    expect(await part().getByRole('textbox', { name: 'Its address' }).inputValue()).toBe('http://planner.example/');
  });

  it('offers a download where the planner has no address', async () => {
    await open();
    await setUp();
    await fill('Its address', '');
    await button('Set it up').click();
    const [download] = await Promise.all([page.waitForEvent('download'), button('Download it').click()]);
    expect(download.suggestedFilename()).toBe('sheet.json');
  });

  it('tests a planner, gives it a new secret, and removes it', async () => {
    await open();
    await setUp();
    await button('Set it up').click();
    const first = await secretShown();
    await button('Try it').click();
    await part().getByText('It answered: all is well.').waitFor();
    await button('New signing secret').click();
    await part()
      .getByText(/The old one holds until/)
      .waitFor();
    expect(await secretShown()).not.toBe(first);
    await button('Remove').click();
    await part()
      .getByText(/A planner takes the sheet and counts/)
      .waitFor();
  });
});
