import { memo, type ReactNode } from 'react';
import { CRAFTS, FIBRES, type Fibre } from '#fabric';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { NumberField } from '../field/NumberField.tsx';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import { onShelf } from '../notebook/kinds.ts';
import type { Pair, YarnNotes } from '../notebook/notebook.ts';
import { openEntry, withNotes, type Shelf } from '../notebook/shelf.ts';
import { ShelfBar } from '../notebook/ShelfBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import { change } from '../notebook/use-notebook.ts';
import { showSmall } from '../reading/numbers.ts';
import { toFabric } from '../reckon/to-fabric.ts';
import { RoomDrawing } from './RoomDrawing.tsx';

const write = (how: (notes: YarnNotes) => YarnNotes): void =>
  change((notebook) => onShelf(notebook, 'yarns', (shelf) => withNotes(shelf, how)));

type PairName = 'washedAcross' | 'washedAlong' | 'pulledAcross' | 'pulledAlong' | 'pulledRib';

/** The yarn, from a swatch or its label, and the room its thickness takes. */
export const YarnSection = memo(function YarnSection({
  shelf,
  tape,
  flatMm,
  bodyMm,
}: {
  readonly shelf: Shelf<YarnNotes>;
  readonly tape: Tape;
  /** Twice the flat width to draw the room of. */
  readonly flatMm: number;
  readonly bodyMm: number | null;
}) {
  const words = say.yarn;
  const { notes } = openEntry(shelf);
  const { fabric, input, wrong } = toFabric(notes);
  const pair = (name: PairName, label: string, before: string, after: string): ReactNode => (
    <PairFields
      legend={label}
      labels={[before, after]}
      pair={notes[name]}
      tape={tape}
      onPair={(changed) => write((it) => ({ ...it, [name]: changed }))}
    />
  );
  return (
    <>
      <p className="lead">{words.lead}</p>
      <ShelfBar kind="yarns" shelf={shelf} nameLabel={words.name} />
      <Choice
        legend={words.craft.legend}
        value={notes.craft}
        options={CRAFTS.map((value) => ({ value, label: words.craft[value] }))}
        onValue={(craft) => write((it) => ({ ...it, craft }))}
      />
      <div className="yarn">
        <div className="yarn-fields">
          <h3>{words.swatch}</h3>
          <LengthField
            label={words.fourLayers}
            quantity="small"
            typed={notes.fourLayers}
            tape={tape}
            whenEmpty={words.fourLayersHint}
            onTyped={(fourLayers) => write((it) => ({ ...it, fourLayers }))}
          />
          <h3>{words.label}</h3>
          <div className="few">
            <Select
              label={words.category}
              value={notes.category === null ? '' : String(notes.category)}
              options={[
                { value: '', label: words.unsaid },
                ...words.categories.map((label, i) => ({ value: String(i), label })),
              ]}
              onValue={(value) => write((it) => ({ ...it, category: value === '' ? null : Number(value) }))}
            />
            <NumberField
              label={words.stitches}
              value={notes.stitches}
              onValue={(stitches) => write((it) => ({ ...it, stitches }))}
            />
            <NumberField
              label={words.wraps}
              value={notes.wraps}
              onValue={(wraps) => write((it) => ({ ...it, wraps }))}
            />
            <NumberField
              label={words.metres}
              value={notes.metresPer100g}
              unit={words.metresUnit}
              onValue={(metresPer100g) => write((it) => ({ ...it, metresPer100g }))}
            />
            <Select
              label={words.fibre}
              value={notes.fibre ?? ''}
              options={[
                { value: '' as Fibre | '', label: words.unsaid },
                ...FIBRES.map((value) => ({ value, label: words.fibres[value] })),
              ]}
              onValue={(value) => write((it) => ({ ...it, fibre: value === '' ? null : value }))}
            />
          </div>
        </div>
        <div className="yarn-room">
          <RoomDrawing
            flatMm={flatMm}
            bodyMm={bodyMm}
            thicknessMm={input.thicknessMm ?? fabric?.thicknessMm ?? 3}
            tape={tape}
          />
          <p className="taken" role="status">
            {wrong ?? (fabric ? words.taken(showSmall(fabric.thicknessMm, tape), fabric.fromText) : words.unknown)}
          </p>
        </div>
      </div>
      <details>
        <summary>{words.washing}</summary>
        <p>{words.washingLead}</p>
        {pair('washedAcross', words.across, words.before, words.after)}
        {pair('washedAlong', words.along, words.before, words.after)}
        <NumberField
          label={words.grams}
          value={notes.swatchGrams}
          unit="g"
          hint={words.gramsHint}
          onValue={(swatchGrams) => write((it) => ({ ...it, swatchGrams }))}
        />
      </details>
      <details>
        <summary>{words.pulling}</summary>
        <p>{words.pullingLead}</p>
        {pair('pulledAcross', words.across, words.rest, words.pulled)}
        {pair('pulledAlong', words.along, words.rest, words.pulled)}
        {pair('pulledRib', words.rib, words.rest, words.pulled)}
      </details>
    </>
  );
});

function PairFields({
  legend,
  labels,
  pair,
  tape,
  onPair,
}: {
  readonly legend: string;
  readonly labels: readonly [string, string];
  readonly pair: Pair;
  readonly tape: Tape;
  readonly onPair: (pair: Pair) => void;
}) {
  return (
    <fieldset className="pair">
      <legend>{legend}</legend>
      <LengthField
        label={labels[0]}
        typed={pair.before}
        tape={tape}
        onTyped={(before) => onPair({ ...pair, before })}
      />
      <LengthField label={labels[1]} typed={pair.after} tape={tape} onTyped={(after) => onPair({ ...pair, after })} />
    </fieldset>
  );
}
