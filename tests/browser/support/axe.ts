import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const RULES = {
  everything: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  contrast: { type: 'rule', values: ['color-contrast'] },
};

interface Found {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly target: unknown; readonly failureSummary: string }[];
  }[];
}

/** What axe finds wrong with the page as it stands, one line a place. The script goes in by the browser's own door, past the page's policy. */
export async function axeFindings(
  page: Page,
  only: 'everything' | 'contrast' = 'everything',
): Promise<readonly string[]> {
  const client = await page.context().newCDPSession(page);
  await client.send('Runtime.evaluate', { expression: source });
  // What lies beneath the way to the leaves comes out from under it by scrolling; it is not too small a target.
  await page.evaluate(() => window.scrollTo(0, 0));
  const run = `axe.run(document, { runOnly: ${JSON.stringify(RULES[only])}, resultTypes: ['violations'] })`;
  const { result } = await client.send('Runtime.evaluate', {
    expression: run,
    awaitPromise: true,
    returnByValue: true,
  });
  await client.detach();
  return (result.value as Found).violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} ${JSON.stringify(target)} ${failureSummary}`),
  );
}
