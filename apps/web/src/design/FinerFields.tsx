import { memo } from 'react';
import { BASES, type Silhouette } from '#fit';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import { DESIGN_LENGTHS, type DesignLength, type DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { BasisField } from './BasisField.tsx';
import { DesignLengthField } from './DesignLengthField.tsx';
import { writeDesign } from './write-design.ts';
import textStyles from '../ui/text.module.css';
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
  basis,
  hasGarment,
  lengths,
  basis,
  tape,
}: Pick<DesignNotes, 'silhouette' | 'lengths' | 'basis'> & { readonly tape: Tape }) {
  const words = say.design;
  const finer = DESIGN_LENGTHS.filter((name) => name !== 'customLength' && (HAVE[name]?.includes(silhouette) ?? true));
  return (
    <details>
      <summary>{words.finer}</summary>
      <Choice
        legend={words.basis.legend}
        value={basis ?? 'unsaid'}
        options={(['unsaid', ...BASES] as const).map((value) => ({ value, label: words.basis[value] }))}
        onValue={(to) => writeDesign((it) => ({ ...it, basis: to === 'unsaid' ? null : to }))}
      />
      <p className={textStyles.hint}>
        {basis !== null && basis !== 'body' && !hasGarment ? words.noGarment : words.basisHint}
      </p>
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
