import type { Computation } from '../compute/computation.ts';
import type { DesignNotes, EaseNotes } from '../notebook/notebook.ts';

/** The choices of a design with those that were left out as they came to be. */
export interface Decided {
  readonly length: NonNullable<DesignNotes['length']>;
  readonly hem: NonNullable<DesignNotes['hem']>;
  readonly ease: EaseNotes;
}

export function decided({ length, hem, ease }: DesignNotes, computation: Computation | null): Decided {
  const design = computation?.sheet?.design;
  const isLikeGarment = design !== undefined && design.basis !== 'body';
  return {
    length: length ?? design?.length ?? 'regular',
    hem: hem ?? 'straight',
    ease: ease ?? (isLikeGarment ? 'garment' : 'classic'),
  };
}
