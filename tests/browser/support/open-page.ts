import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import type { Environment } from '../../../apps/api/src/settings/settings.ts';
import { runApp, type RunningApp } from '../../support/app.ts';
import { CHROMIUM } from './chromium.ts';

/** The built page, served by the API on an empty database, and a browser to look at it with. */
export interface Served {
  readonly address: string;
  readonly app: RunningApp;
  readonly browser: Browser;
  /** A new visitor, who knows nothing of the others. What the page logs as an error fails the test that `quiet` is asked in. */
  visit(options?: BrowserContextOptions): Promise<Page>;
  /** An empty store for the next visitor. */
  empty(): Promise<void>;
  /** Everything the browser complained about so far, and requests that left the page's own address. */
  readonly complaints: string[];
  stop(): Promise<void>;
}

export async function servePage(more: Environment = {}): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-page-'));
  await buildPage(folder);
  const app = await runApp('sqlite', { PAGE_DIR: folder, ...more });
  const { port } = app.app.getHttpServer().address() as AddressInfo;
  const address = `http://127.0.0.1:${port}/`;
  const browser = await chromium.launch({ executablePath: CHROMIUM ?? '', args: ['--no-sandbox'] });
  const complaints: string[] = [];
  return {
    address,
    app,
    browser,
    complaints,
    async empty() {
      await app.http.delete('/v1/everything?confirm=erase-everything').expect(204);
    },
    async visit(options = {}) {
      const context = await browser.newContext({ locale: 'en-GB', reducedMotion: 'reduce', ...options });
      const page = await context.newPage();
      page.setDefaultTimeout(60_000);
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('console', (message) => {
        if (message.type() === 'error' && !/Failed to load resource/.test(message.text()))
          complaints.push(message.text());
      });
      page.on('request', (request) => {
        if (!request.url().startsWith(address) && !request.url().startsWith('blob:'))
          complaints.push(`asked ${request.url()}`);
      });
      await page.goto(address);
      await page.getByRole('heading', { level: 1 }).waitFor();
      return page;
    },
    async stop() {
      await browser.close();
      await app.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** The page as it is shipped: Vitest's own NODE_ENV would build React for development. */
async function buildPage(folder: string): Promise<void> {
  const mode = process.env['NODE_ENV'];
  process.env['NODE_ENV'] = 'production';
  try {
    await build({
      configFile: 'apps/web/vite.config.ts',
      root: 'apps/web',
      logLevel: 'error',
      build: { outDir: folder, emptyOutDir: true },
    });
  } finally {
    process.env['NODE_ENV'] = mode;
  }
}

/** Nothing was logged, nothing was blocked by the page's own policy, nothing was asked of anybody else. */
export const quiet = ({ complaints }: Served): void => expect(complaints.splice(0)).toEqual([]);

/** For each of the tests it stands among, an empty store and a new visitor, handed to `take`; in the end nothing may have been complained of. */
export function eachVisit(take: (page: Page, served: Served) => void, options?: BrowserContextOptions): void {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
  });
  beforeEach(async () => {
    await served.empty();
    page = await served.visit(options);
    take(page, served);
  });
  afterEach(async () => {
    quiet(served);
    await page.context().close();
  });
  afterAll(() => served.stop());
}
