import { useId } from 'react';
import type { AdvisedDesign, EaseCategory } from '#fit';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { showPercent, showSigned } from '../reading/numbers.ts';
import { writeDesign } from './write-design.ts';

/** How close it is to be: a band and a place in it, or a number; and how it comes out. Every part keeps its place. */
export function EaseFields({
  notes,
  tape,
  advised,
  categories,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly advised: AdvisedDesign | null;
  readonly categories: readonly EaseCategory[];
}) {
  const words = say.design;
  const place = useId();
  if (notes.basis === 'garment')
    return (
      <LengthField
        label={words.easeChange}
        quantity="signed"
        typed={notes.easeChange}
        tape={tape}
        whenEmpty={words.easeChangeHint}
        onTyped={(easeChange) => writeDesign((it) => ({ ...it, easeChange }))}
      />
    );
  return (
    <div className="ease">
      <Choice
        legend={words.ease.legend}
        value={notes.ease}
        options={[...categories, 'own' as const].map((value) => ({ value, label: words.ease[value] }))}
        onValue={(ease) => writeDesign((it) => ({ ...it, ease }))}
      />
      <div className="ease-place">
        {notes.ease === 'own' ? (
          <LengthField
            label={words.ownEase}
            quantity="signed"
            typed={notes.ownEase}
            tape={tape}
            whenEmpty={words.ownEaseHint}
            onTyped={(ownEase) => writeDesign((it) => ({ ...it, ownEase }))}
          />
        ) : (
          <div className="field">
            <label htmlFor={place}>{words.place}</label>
            <input
              id={place}
              type="range"
              min={0}
              max={1}
              step={0.05}
              value={notes.place}
              onChange={(event) => writeDesign((it) => ({ ...it, place: Number(event.target.value) }))}
            />
          </div>
        )}
      </div>
      <Outcome ease={advised?.ease ?? null} tape={tape} />
    </div>
  );
}

function Outcome({ ease, tape }: { readonly ease: AdvisedDesign['ease'] | null; readonly tape: Tape }) {
  const words = say.design;
  const said = [
    ease?.chosen == null ||
    showSigned(ease.chosen, tape) === (ease.tableTerms === null ? null : showSigned(ease.tableTerms, tape))
      ? null
      : words.chosen(showSigned(ease.chosen, tape)),
    ease?.tableTerms == null || ease.lies === null ? null : words.lies(showSigned(ease.tableTerms, tape), ease.lies),
    ease?.chanceOfBand == null ? null : words.inBand(showPercent(ease.chanceOfBand)),
  ];
  return <p className="hint outcome">{said.filter((line) => line !== null).join(' ')}</p>;
}
