import { memo } from 'react';
import { HEMS, LENGTHS, NECKLINES, SILHOUETTES, type LengthChoice } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { Choice } from '../field/Choice.tsx';
import { TextField } from '../field/TextField.tsx';
import { say } from '../messages.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { DesignLengthField } from './DesignLengthField.tsx';
import { OpeningFields } from './OpeningFields.tsx';
import { Sketch } from './Sketch.tsx';
import { writeDesign } from './write-design.ts';

/** The choices of the design, with sketches where they help. */
export const DesignChoices = memo(function DesignChoices({
  title,
  silhouette,
  construction,
  neckline,
  opening,
  length,
  customLength,
  hem,
  garmentHasLength,
  tape,
}: Pick<DesignNotes, 'title' | 'silhouette' | 'construction' | 'neckline' | 'opening' | 'hem'> & {
  readonly length: LengthChoice;
  readonly garmentHasLength: boolean;
  readonly customLength: Typed | undefined;
  readonly tape: Tape;
}) {
  const words = say.design;
  return (
    <>
      <TextField
        label={words.name}
        value={title}
        onValue={(to) => writeDesign((it) => ({ ...it, title: to.slice(0, 120) }))}
      />
      <Choice
        legend={words.silhouette.legend}
        value={silhouette}
        options={SILHOUETTES.map((value) => ({
          value,
          label: words.silhouette[value],
          drawing: <Sketch silhouette={value} />,
        }))}
        onValue={(to) => writeDesign((it) => ({ ...it, silhouette: to }))}
      />
      <Choice
        legend={words.construction}
        value={construction}
        options={CONSTRUCTIONS.map((value) => ({
          value,
          label: say.construction[value],
          drawing: <Sketch construction={value} />,
        }))}
        onValue={(to) => writeDesign((it) => ({ ...it, construction: to }))}
      />
      <Choice
        legend={words.neckline.legend}
        value={neckline}
        options={NECKLINES.map((value) => ({
          value,
          label: words.neckline[value],
          drawing: <Sketch neckline={value} />,
        }))}
        onValue={(to) => writeDesign((it) => ({ ...it, neckline: to }))}
      />
      {silhouette !== 'cardigan' && <OpeningFields opening={opening} construction={construction} tape={tape} />}
      <Choice
        legend={words.length.legend}
        value={length}
        options={LENGTHS.filter((value) => value !== 'as-garment' || garmentHasLength || length === value).map(
          (value) => ({
            value,
            label: words.length[value],
          }),
        )}
        onValue={(to) => writeDesign((it) => ({ ...it, length: to }))}
      />
      {length === 'custom' && (
        <DesignLengthField
          name="customLength"
          label={words.customLength}
          typed={customLength}
          tape={tape}
          whenEmpty=" "
        />
      )}
      <Choice
        legend={words.hem.legend}
        value={hem ?? 'unsaid'}
        options={(['unsaid', ...HEMS] as const).map((value) => ({ value, label: words.hem[value] }))}
        onValue={(to) => writeDesign((it) => ({ ...it, hem: to === 'unsaid' ? null : to }))}
      />
    </>
  );
});
