import type { PlannerTakes } from '#hand-off';

/** A planner as the maker registered it. Without an address it is handed sheets by hand, or pulls them. */
export interface PlannerDocument {
  readonly title: string;
  readonly address: string | null;
  readonly takes: PlannerTakes;
}
