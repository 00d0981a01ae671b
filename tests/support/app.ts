import type { NestExpressApplication } from '@nestjs/platform-express';
import supertest, { type Test } from 'supertest';
import { makeApp } from '../../apps/api/src/app.ts';
import type { Environment } from '../../apps/api/src/settings/settings.ts';
import { expectMatchesApi } from './matches-api.ts';
import { emptyDatabase, type DatabaseKind } from './databases.ts';

const METHODS = ['get', 'head', 'post', 'put', 'patch', 'delete', 'options'] as const;
type Method = (typeof METHODS)[number];

/** A running API on an empty database of its own. */
export interface RunningApp {
  readonly app: NestExpressApplication;
  readonly env: Environment;
  /** Sends requests; every answer is checked against the OpenAPI document. */
  readonly http: Readonly<Record<Method, (path: string) => Test>>;
  stop(): Promise<void>;
}

export async function runApp(kind: DatabaseKind, more: Environment = {}): Promise<RunningApp> {
  const database = await emptyDatabase(kind);
  const env = { ...database.env, PAGE_DIR: 'there-is-none', BACKUPS_KEPT: '0', ...more };
  const app = await makeApp(env);
  await app.listen(0, '127.0.0.1');
  return {
    app,
    env,
    http: checkedHttp(app),
    stop: async () => {
      await app.close();
      await database.remove();
    },
  };
}

function checkedHttp(app: NestExpressApplication): RunningApp['http'] {
  const agent = supertest(app.getHttpServer());
  const checked = (method: Method) => (path: string) => agent[method](path).expect(expectMatchesApi);
  return Object.fromEntries(METHODS.map((method) => [method, checked(method)])) as RunningApp['http'];
}
