import type { PlannerErrors } from '#advice-text';
import { errorsOf } from '#measure';

export const plannerError = errorsOf<PlannerErrors>();
