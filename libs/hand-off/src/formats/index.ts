import type { PlannerFormat } from '../planner-takes.ts';
import { csv } from './csv.ts';
import { flat } from './flat.ts';
import type { Format } from './format.ts';
import { wholeSheet } from './whole-sheet.ts';

/** Every format, with how a sheet is written in it. */
export const FORMATS: Readonly<Record<PlannerFormat, Format>> = { sheet: wholeSheet, flat, csv };
