import { ATTEMPT } from '../hand-off/outbox/attempt.entity.ts';
import { HAND_OFF } from '../hand-off/outbox/hand-off.entity.ts';
import { PLANNER } from '../hand-off/planners/planner.entity.ts';
import { READ_KEY } from '../hand-off/read-keys/read-key.entity.ts';
import { IDEMPOTENT_WRITE } from '../idempotency/idempotent-write.entity.ts';
import { MAKER } from '../maker/maker.entity.ts';
import { BODY, FABRIC, GARMENT } from '../records/record.entity.ts';
import { TARGET_SHEET } from '../target-sheets/target-sheet.entity.ts';

export const ENTITIES = [
  MAKER,
  BODY,
  GARMENT,
  FABRIC,
  TARGET_SHEET,
  PLANNER,
  HAND_OFF,
  ATTEMPT,
  READ_KEY,
  IDEMPOTENT_WRITE,
];
