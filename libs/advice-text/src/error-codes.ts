import type { BodyErrors } from '#body';
import type { FabricErrors } from '#fabric';
import type { GarmentErrors } from '#garment';
import type { MeasureErrors } from '#measure';

type Of<Errors, Code> = Code extends keyof Errors ? Errors[Code] : never;

/** The parameters of every error the libs throw, by code. A code that two libs use may have the parameters of either. */
export type ErrorCodes = {
  readonly [Code in keyof MeasureErrors | keyof BodyErrors | keyof GarmentErrors | keyof FabricErrors]:
    Of<MeasureErrors, Code> | Of<BodyErrors, Code> | Of<GarmentErrors, Code> | Of<FabricErrors, Code>;
};
