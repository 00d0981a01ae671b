import { Global, Module } from '@nestjs/common';
import { loadBodyModel } from '#body';

/** The token of the `BodyModel`: what was not measured of adults, and questions about what was. */
export const BODY_MODEL = Symbol('BODY_MODEL');

@Global()
@Module({ providers: [{ provide: BODY_MODEL, useFactory: loadBodyModel }], exports: [BODY_MODEL] })
export class BodyModelModule {}
