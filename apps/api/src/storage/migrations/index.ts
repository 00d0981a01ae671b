import { MakerAndRecords1764000000000 } from './common/1764000000000-maker-and-records.ts';

/** In the order they run. `common/` runs on both databases; what differs goes to `sqlite/` and `postgres/`. */
export const MIGRATIONS = [MakerAndRecords1764000000000];
