import type { NestExpressApplication } from '@nestjs/platform-express';
import supertest from 'supertest';
import { makeApp } from '../../apps/api/src/app.ts';
import type { Environment } from '../../apps/api/src/settings/settings.ts';
import { emptyDatabase, type DatabaseKind } from './databases.ts';

/** A running API on an empty database of its own. */
export interface RunningApp {
  readonly app: NestExpressApplication;
  readonly env: Environment;
  readonly http: ReturnType<typeof supertest>;
  stop(): Promise<void>;
}

export async function runApp(kind: DatabaseKind, more: Environment = {}): Promise<RunningApp> {
  const database = await emptyDatabase(kind);
  const env = { ...database.env, PAGE_DIR: 'there-is-none', ...more };
  const app = await makeApp(env);
  await app.listen(0, '127.0.0.1');
  return {
    app,
    env,
    http: supertest(app.getHttpServer()),
    stop: async () => {
      await app.close();
      await database.remove();
    },
  };
}
