import { useId } from 'react';
import type { EaseCategory } from '#fit';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { writeDesign } from './write-design.ts';
import textStyles from '../ui/text.module.css';
import fieldStyles from '../field/Field.module.css';
import styles from './EaseFields.module.css';

/** The ease: a band and a place in it, or a number; and the result. Every part keeps its place. */
export function EaseFields({
  notes,
  tape,
  outcome,
  categories,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly outcome: string;
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
    <div>
      <Choice
        legend={words.ease.legend}
        value={notes.ease}
        options={[...categories, 'own' as const].map((value) => ({ value, label: words.ease[value] }))}
        onValue={(ease) => writeDesign((it) => ({ ...it, ease }))}
      />
      <div className={styles.place}>
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
          <div className={fieldStyles.field}>
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
      <p className={`${textStyles.hint} ${styles.outcome}`}>{outcome}</p>
    </div>
  );
}
