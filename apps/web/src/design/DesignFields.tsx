import { memo } from 'react';
import type { Favourites } from '#fit';
import type { Garment } from '#garment';
import { LayerFields } from '../field/LayerFields.tsx';
import { say } from '../messages.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import type { Decided } from './decided.ts';
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
  decided,
  garment,
  favourites,
  outcome,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly decided: Decided;
  /** The sweater that the design may be based on. */
  readonly garment: Garment | null;
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
        length={decided.length}
        customLength={notes.lengths.customLength}
        hem={decided.hem}
        hasLength={garment?.measures.some(({ name }) => name === 'shoulder-to-hem') ?? false}
        tape={tape}
      />
      <EaseFields
        notes={notes}
        ease={decided.ease}
        tape={tape}
        outcome={outcome}
        hasGarment={garment !== null}
        favourites={favourites}
      />
      <LayerFields
        legend={words.beneath}
        layer={notes.layer}
        tape={tape}
        onLayer={(layer) => writeDesign((it) => ({ ...it, layer }))}
      />
      <FinerFields
        silhouette={notes.silhouette}
        basis={notes.basis}
        hasGarment={garment !== null}
        lengths={notes.lengths}
        tape={tape}
      />
      <RulesChanged rules={notes.rules} />
      <AllRules rules={notes.rules} />
    </>
  );
});
