import { MakerAndRecords1764000000000 } from './common/1764000000000-maker-and-records.ts';
import { HandOff1764000200000 } from './common/1764000200000-hand-off.ts';
import { IdempotentWrites1764000300000 } from './common/1764000300000-idempotent-writes.ts';
import { SeveralGarments1764000500000 } from './common/1764000500000-several-garments.ts';
import { SheetsWithOpenings1764000400000 } from './common/1764000400000-sheets-with-openings.ts';
import { TargetSheets1764000100000 } from './common/1764000100000-target-sheets.ts';

/** In the order they run. `common/` runs on both databases; what differs goes to `sqlite/` and `postgres/`. */
export const MIGRATIONS = [
  MakerAndRecords1764000000000,
  TargetSheets1764000100000,
  HandOff1764000200000,
  IdempotentWrites1764000300000,
  SheetsWithOpenings1764000400000,
  SeveralGarments1764000500000,
];
