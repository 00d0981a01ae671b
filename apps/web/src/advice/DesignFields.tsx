import { memo } from 'react';
import { BASES, EASE_CATEGORIES, HEMS, LENGTHS, NECKLINES, SILHOUETTES, type Neckline, type Silhouette } from '#fit';
import { CONSTRUCTIONS, type Construction } from '#garment';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { TextField } from '../field/TextField.tsx';
import { LayerFields } from '../garment/LayerFields.tsx';
import { say } from '../messages.ts';
import { DESIGN_LENGTHS, type DesignLength, type DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { EaseFields } from './EaseFields.tsx';
import { AllRules, RulesChanged } from './Rules.tsx';
import { Sketch } from './Sketch.tsx';
import { writeDesign } from './write-design.ts';

const FOR_CARDIGANS: readonly DesignLength[] = ['frontBand', 'overlap'];

/** The choices of the design, each with its picture where a picture says it better. */
export const DesignFields = memo(function DesignFields({
  notes,
  tape,
  hasGarment,
  outcome,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly hasGarment: boolean;
  /** How the ease comes out, in words. */
  readonly outcome: string;
}) {
  const words = say.design;
  const lengthField = (name: DesignLength, label: string, whenEmpty: string = words.workedOut) => (
    <LengthField
      key={name}
      label={label}
      typed={notes.lengths[name]}
      tape={tape}
      whenEmpty={whenEmpty}
      onTyped={(typed) => writeDesign((it) => ({ ...it, lengths: { ...it.lengths, [name]: typed } }))}
    />
  );
  const finer = DESIGN_LENGTHS.filter(
    (name) => name !== 'customLength' && (notes.silhouette === 'cardigan' || !FOR_CARDIGANS.includes(name)),
  );
  return (
    <>
      <p className="lead">{words.lead}</p>
      <TextField
        label={words.name}
        value={notes.title}
        onValue={(title) => writeDesign((it) => ({ ...it, title: title.slice(0, 120) }))}
      />
      <Choice
        legend={words.silhouette.legend}
        value={notes.silhouette}
        options={SILHOUETTES.map((value) => ({
          value,
          label: words.silhouette[value],
          drawing: <Sketch silhouette={value} />,
        }))}
        onValue={(silhouette: Silhouette) => writeDesign((it) => ({ ...it, silhouette }))}
      />
      <Choice
        legend={words.construction}
        value={notes.construction}
        options={CONSTRUCTIONS.map((value) => ({
          value,
          label: say.construction[value],
          drawing: <Sketch construction={value} />,
        }))}
        onValue={(construction: Construction) => writeDesign((it) => ({ ...it, construction }))}
      />
      <Choice
        legend={words.neckline.legend}
        value={notes.neckline}
        options={NECKLINES.map((value) => ({
          value,
          label: words.neckline[value],
          drawing: <Sketch neckline={value} />,
        }))}
        onValue={(neckline: Neckline) => writeDesign((it) => ({ ...it, neckline }))}
      />
      <Choice
        legend={words.length.legend}
        value={notes.length}
        options={LENGTHS.map((value) => ({ value, label: words.length[value] }))}
        onValue={(length) => writeDesign((it) => ({ ...it, length }))}
      />
      {notes.length === 'custom' && lengthField('customLength', words.customLength, ' ')}
      <Choice
        legend={words.hem.legend}
        value={notes.hem}
        options={HEMS.map((value) => ({ value, label: words.hem[value] }))}
        onValue={(hem) => writeDesign((it) => ({ ...it, hem }))}
      />
      <Choice
        legend={words.basis.legend}
        value={notes.basis}
        options={BASES.map((value) => ({ value, label: words.basis[value] }))}
        onValue={(basis) => writeDesign((it) => ({ ...it, basis }))}
      />
      <p className="hint">{notes.basis !== 'body' && !hasGarment ? words.noGarment : words.basisHint}</p>
      <EaseFields notes={notes} tape={tape} outcome={outcome} categories={EASE_CATEGORIES} />
      <LayerFields
        legend={words.beneath}
        layer={notes.layer}
        tape={tape}
        onLayer={(layer) => writeDesign((it) => ({ ...it, layer }))}
      />
      <details>
        <summary>{words.finer}</summary>
        <p>{words.finerLead}</p>
        <div className="few">
          {finer.map((name) => lengthField(name, words.lengths[name as keyof typeof words.lengths]))}
        </div>
      </details>
      <RulesChanged rules={notes.rules} />
      <AllRules rules={notes.rules} />
    </>
  );
});
