import { memo } from 'react';
import type { Silhouette } from '#fit';
import { say } from '../messages.ts';
import { DESIGN_LENGTHS, type DesignLength, type DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { BasisField } from './BasisField.tsx';
import { DesignLengthField } from './DesignLengthField.tsx';
import fieldGrid from '../ui/field-grid.module.css';

/** Lengths that only some kinds have. */
const HAVE: Readonly<Partial<Record<DesignLength, readonly Silhouette[]>>> = {
  frontBand: ['cardigan'],
  overlap: ['cardigan'],
  cuffWidth: ['pullover', 'cardigan'],
};

/** Lengths that the rules give where they are empty. */
export const FinerFields = memo(function FinerFields({
  silhouette,
  lengths,
  basis,
  tape,
}: Pick<DesignNotes, 'silhouette' | 'lengths' | 'basis'> & { readonly tape: Tape }) {
  const words = say.design;
  const finer = DESIGN_LENGTHS.filter((name) => name !== 'customLength' && (HAVE[name]?.includes(silhouette) ?? true));
  return (
    <details>
      <summary>{words.finer}</summary>
      <p>{words.finerLead}</p>
      <BasisField basis={basis} />
      <div className={fieldGrid.grid}>
        {finer.map((name) => (
          <DesignLengthField
            key={name}
            name={name}
            label={words.lengths[name as keyof typeof words.lengths]}
            typed={lengths[name]}
            tape={tape}
            whenEmpty={words.workedOut}
          />
        ))}
      </div>
    </details>
  );
});
