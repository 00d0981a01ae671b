import { blankPlanner, type PlannerNotes } from './planner-notes.ts';

/** Where a planner that is being written down lies until it is set up, so that a reload loses nothing. */
const PLACE = 'easewright-planner-1';

export function readDraft(): PlannerNotes {
  try {
    return { ...blankPlanner, ...(JSON.parse(localStorage.getItem(PLACE) ?? '{}') as Partial<PlannerNotes>) };
  } catch {
    return blankPlanner;
  }
}

export function writeDraft(notes: PlannerNotes | null): void {
  try {
    if (notes === null) localStorage.removeItem(PLACE);
    else localStorage.setItem(PLACE, JSON.stringify(notes));
  } catch {
    // No space: it stays on the page.
  }
}
