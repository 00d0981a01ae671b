import type { BodyErrors } from '#body';
import type { CountsErrors } from '#counts';
import type { FabricErrors } from '#fabric';
import type { FitErrors } from '#fit';
import type { GarmentErrors } from '#garment';
import type { MeasureErrors } from '#measure';
import type { PlannerErrors } from './planner-codes.ts';
import type { SheetErrors } from './sheet-codes.ts';

type AllErrors = [
  MeasureErrors,
  BodyErrors,
  GarmentErrors,
  FabricErrors,
  FitErrors,
  SheetErrors,
  CountsErrors,
  PlannerErrors,
];
type Code = AllErrors[number] extends infer Errors ? (Errors extends unknown ? keyof Errors : never) : never;
type Of<Errors, C> = Errors extends unknown ? (C extends keyof Errors ? Errors[C] : never) : never;

/** The parameters of every error the libs throw, by code. A code that two libs use may have the parameters of either. */
export type ErrorCodes = { readonly [C in Code]: Of<AllErrors[number], C> };
