import type { Provider } from '@nestjs/common';
import { loadBodyModel } from '#body';

/** The token of the `BodyModel`: what was not measured of adults, and questions about what was. */
export const BODY_MODEL = Symbol('BODY_MODEL');

export const bodyModelProvider: Provider = { provide: BODY_MODEL, useFactory: loadBodyModel };
