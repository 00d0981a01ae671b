import { memo } from 'react';
import type { Favourites } from '#fit';
import { LayerFields } from '../field/LayerFields.tsx';
import { say } from '../messages.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { DesignChoices } from './DesignChoices.tsx';
import { EaseFields } from './EaseFields.tsx';
import { FinerFields } from './FinerFields.tsx';
import { AllRules, RulesChanged } from './Rules.tsx';
import { writeDesign } from './write-design.ts';
import textStyles from '../ui/text.module.css';

/** All fields of the design. */
export const DesignFields = memo(function DesignFields({
  notes,
  tape,
  hasGarment,
  garmentHasLength,
  favourites,
  outcome,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly hasGarment: boolean;
  readonly garmentHasLength: boolean;
  /** The ease of the sweaters that she likes, from two on. */
  readonly favourites: Favourites | null;
  /** The resulting ease, in words. */
  readonly outcome: string;
}) {
  const words = say.design;
  return (
    <>
      <p className={textStyles.lead}>{words.lead}</p>
      <DesignChoices
        title={notes.title}
        silhouette={notes.silhouette}
        construction={notes.construction}
        neckline={notes.neckline}
        opening={notes.opening}
        length={notes.length ?? (garmentHasLength && notes.basis !== 'body' ? 'as-garment' : 'regular')}
        garmentHasLength={garmentHasLength}
        customLength={notes.lengths.customLength}
        hem={notes.hem}
        tape={tape}
      />
      {notes.basis !== null && notes.basis !== 'body' && !hasGarment && (
        <p className={textStyles.hint}>{words.noGarment}</p>
      )}
      <EaseFields notes={notes} tape={tape} outcome={outcome} hasGarment={hasGarment} favourites={favourites} />
      <LayerFields
        legend={words.beneath}
        layer={notes.layer}
        tape={tape}
        onLayer={(layer) => writeDesign((it) => ({ ...it, layer }))}
      />
      <FinerFields silhouette={notes.silhouette} lengths={notes.lengths} basis={notes.basis} tape={tape} />
      <RulesChanged rules={notes.rules} />
      <AllRules rules={notes.rules} />
    </>
  );
});
