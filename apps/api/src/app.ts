import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { ExpressAdapter, type NestExpressApplication } from '@nestjs/platform-express';
import type { DataSource } from 'typeorm';
import { AppModule } from './app.module.ts';
import { serveDocs } from './docs/serve-docs.ts';
import { handOffSettingsFrom } from './hand-off/hand-off-settings.ts';
import { allowOrigins } from './http/allow-origins.ts';
import { answerBrokenRequests } from './http/answer-broken-requests.ts';
import { checkAddress } from './http/check-address.ts';
import { checkHost } from './http/check-host.ts';
import { checkMethod } from './http/check-method.ts';
import { compress } from './http/compress.ts';
import { honourIfNoneMatch } from './http/honour-if-none-match.ts';
import { newServer } from './http/new-server.ts';
import { keepToThisMachine } from './http/this-machine.ts';
import { refuseParameters } from './http/refuse-parameters.ts';
import { refuseCrossSite } from './http/refuse-cross-site.ts';
import { requestLog } from './log/request-log.ts';
import { StructuredLogger } from './log/structured-logger.ts';
import { problemHandler } from './http/problem.filter.ts';
import { readBody } from './http/read-body.ts';
import { securityHeaders } from './http/security-headers.ts';
import { servePage } from './page/serve-page.ts';
import { settingsFrom, type Environment } from './settings/settings.ts';
import { openDatabase } from './storage/open-database.ts';

/**
 * Builds the application from an environment and from nothing else, so that one process can hold several. It is not listening yet.
 *
 * @throws StartError when a setting is wrong or the database cannot be used
 */
export async function makeApp(env: Environment): Promise<NestExpressApplication> {
  const settings = settingsFrom(env);
  const logger = new StructuredLogger(settings.logLevel);
  const dataSource = await openDatabase(settings.database);
  const handOff = await orClosed(dataSource, () => handOffSettingsFrom(env, settings.database));
  const module = AppModule.over(dataSource, settings, handOff);
  const app = await NestFactory.create<NestExpressApplication>(module, new ExpressAdapter(newServer()), {
    bodyParser: false,
    abortOnError: false,
    logger,
  });
  const publicNames = handOff.publicUrl === null ? [] : [new URL(handOff.publicUrl).hostname];
  app.use(
    requestLog(logger),
    securityHeaders,
    compress,
    checkHost([...settings.allowedHosts, ...publicNames]),
    keepToThisMachine,
    refuseCrossSite,
    allowOrigins(settings.allowedOrigins),
    checkAddress,
    honourIfNoneMatch,
    checkMethod,
    refuseParameters,
    readBody,
    problemHandler,
  );
  answerBrokenRequests(app.getHttpServer());
  serveDocs(app);
  servePage(app, settings.pageFolder);
  return app;
}

/** What is needed before the application can own the database; where it fails the database is closed again. */
async function orClosed<T>(dataSource: DataSource, read: () => T): Promise<T> {
  try {
    return read();
  } catch (error) {
    await dataSource.destroy();
    throw error;
  }
}
