import { memo } from 'react';
import { EASE_CATEGORIES } from '#fit';
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
  outcome,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly hasGarment: boolean;
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
        length={notes.length}
        customLength={notes.lengths.customLength}
        hem={notes.hem}
        basis={notes.basis}
        tape={tape}
      />
      <p className={textStyles.hint}>{notes.basis !== 'body' && !hasGarment ? words.noGarment : words.basisHint}</p>
      <EaseFields notes={notes} tape={tape} outcome={outcome} categories={EASE_CATEGORIES} />
      <LayerFields
        legend={words.beneath}
        layer={notes.layer}
        tape={tape}
        onLayer={(layer) => writeDesign((it) => ({ ...it, layer }))}
      />
      <FinerFields silhouette={notes.silhouette} lengths={notes.lengths} tape={tape} />
      <RulesChanged rules={notes.rules} />
      <AllRules rules={notes.rules} />
    </>
  );
});
