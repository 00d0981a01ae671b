import { blankPlanner, type PlannerNotes } from './planner-notes.ts';

/** The storage key of a planner that is being entered, so that a reload loses nothing. */
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
    // The storage is full: the draft stays on the page.
  }
}
