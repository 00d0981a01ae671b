import type { SheetErrors } from '#advice-text';
import { errorsOf } from '#measure';

export const sheetError = errorsOf<SheetErrors>();
