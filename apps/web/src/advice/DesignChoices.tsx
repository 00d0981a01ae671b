import { memo } from 'react';
import { BASES, HEMS, LENGTHS, NECKLINES, SILHOUETTES } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { Choice } from '../field/Choice.tsx';
import { TextField } from '../field/TextField.tsx';
import { say } from '../messages.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { DesignLengthField } from './DesignLengthField.tsx';
import { Sketch } from './Sketch.tsx';
import { writeDesign } from './write-design.ts';

/** The choices of the design, each with its picture where a picture says it better. */
export const DesignChoices = memo(function DesignChoices({
  notes,
  tape,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
}) {
  const words = say.design;
  return (
    <>
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
        onValue={(silhouette) => writeDesign((it) => ({ ...it, silhouette }))}
      />
      <Choice
        legend={words.construction}
        value={notes.construction}
        options={CONSTRUCTIONS.map((value) => ({
          value,
          label: say.construction[value],
          drawing: <Sketch construction={value} />,
        }))}
        onValue={(construction) => writeDesign((it) => ({ ...it, construction }))}
      />
      <Choice
        legend={words.neckline.legend}
        value={notes.neckline}
        options={NECKLINES.map((value) => ({
          value,
          label: words.neckline[value],
          drawing: <Sketch neckline={value} />,
        }))}
        onValue={(neckline) => writeDesign((it) => ({ ...it, neckline }))}
      />
      <Choice
        legend={words.length.legend}
        value={notes.length}
        options={LENGTHS.map((value) => ({ value, label: words.length[value] }))}
        onValue={(length) => writeDesign((it) => ({ ...it, length }))}
      />
      {notes.length === 'custom' && (
        <DesignLengthField
          name="customLength"
          label={words.customLength}
          typed={notes.lengths.customLength}
          tape={tape}
          whenEmpty=" "
        />
      )}
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
    </>
  );
});
