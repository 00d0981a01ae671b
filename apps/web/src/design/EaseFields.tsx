import { useId } from 'react';
import { EASE_CATEGORIES, type Favourites } from '#fit';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { DesignNotes, EaseNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, showSigned } from '../reading/numbers.ts';
import { writeDesign } from './write-design.ts';
import textStyles from '../ui/text.module.css';
import fieldStyles from '../field/Field.module.css';
import styles from './EaseFields.module.css';

/** The ease: a band and a place in it, a number, or that of her sweaters; and the result. Every part keeps its place. */
export function EaseFields({
  notes,
  ease,
  tape,
  outcome,
  hasGarment,
  favourites,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly outcome: string;
  /** As chosen, or as it came to be. */
  readonly ease: EaseNotes;
  readonly hasGarment: boolean;
  readonly favourites: Favourites | null;
}) {
  const words = say.design;
  const place = useId();
  const options: readonly EaseNotes[] = [
    ...(hasGarment || ease === 'garment' ? (['garment'] as const) : []),
    ...(favourites !== null || ease === 'favourites' ? (['favourites'] as const) : []),
    ...EASE_CATEGORIES,
    'own',
  ];
  return (
    <div>
      <Choice
        legend={words.ease.legend}
        value={ease}
        options={options.map((value) => ({ value, label: words.ease[value] }))}
        onValue={(to) => writeDesign((it) => ({ ...it, ease: to }))}
      />
      <div className={styles.place}>
        {ease === 'own' ? (
          <LengthField
            label={words.ownEase}
            quantity="signed"
            typed={notes.ownEase}
            tape={tape}
            whenEmpty={words.ownEaseHint}
            onTyped={(ownEase) => writeDesign((it) => ({ ...it, ownEase }))}
          />
        ) : ease === 'garment' ? (
          <LengthField
            label={words.moreThanGarment}
            quantity="signed"
            typed={notes.moreThanGarment}
            tape={tape}
            whenEmpty={words.moreThanGarmentHint}
            onTyped={(to) => writeDesign((it) => ({ ...it, ease, moreThanGarment: to }))}
          />
        ) : ease === 'favourites' ? (
          <p className={textStyles.hint}>
            {favourites &&
              words.favourites(showSigned(favourites.mean, tape), showLength(favourites.sd, tape), favourites.count)}
          </p>
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
              onChange={(event) => writeDesign((it) => ({ ...it, ease, place: Number(event.target.value) }))}
            />
          </div>
        )}
      </div>
      <p className={`${textStyles.hint} ${styles.outcome}`}>{outcome}</p>
    </div>
  );
}
