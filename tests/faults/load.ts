import { setTimeout as delay } from 'node:timers/promises';
import type { ApiProcess } from '../support/api-process.ts';
import { exampleFabric } from '../support/examples.ts';

/** What came of a load of writes: titles that were acknowledged, and how often each status was answered; 0 for none. */
interface LoadResult {
  readonly acknowledged: Set<string>;
  readonly statuses: Map<number, number>;
}

/** Writes fabrics, each with a title of its own, from several clients until it is stopped. */
export function load(api: () => ApiProcess, clients: number): { readonly result: LoadResult; stop(): Promise<void> } {
  const result: LoadResult = { acknowledged: new Set(), statuses: new Map() };
  let stopped = false;
  let count = 0;
  const client = async (): Promise<void> => {
    while (!stopped) {
      const title = `fabric ${count++}`;
      const status = await post(api(), title);
      result.statuses.set(status, (result.statuses.get(status) ?? 0) + 1);
      if (status === 201) result.acknowledged.add(title);
      else await delay(20);
    }
  };
  const all = Promise.all(Array.from({ length: clients }, client));
  return {
    result,
    stop: async () => {
      stopped = true;
      await all;
    },
  };
}

async function post(api: ApiProcess, title: string): Promise<number> {
  try {
    const response = await fetch(`${api.url}/v1/fabrics`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ ...exampleFabric, title }),
    });
    await response.arrayBuffer();
    return response.status;
  } catch {
    return 0;
  }
}

/** The titles of all fabrics that are kept. */
export async function keptTitles(api: ApiProcess): Promise<Set<string>> {
  const { fabrics } = (await (await fetch(`${api.url}/v1/export`)).json()) as { fabrics: { title: string }[] };
  return new Set(fabrics.map(({ title }) => title));
}
