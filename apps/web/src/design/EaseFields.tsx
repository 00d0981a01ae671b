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

/** The ease: as a sweater has it, a band and a place in it, or a number; and the result. Every part keeps its place. */
export function EaseFields({
  notes,
  tape,
  outcome,
  hasGarment,
  favourites,
}: {
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly outcome: string;
  readonly hasGarment: boolean;
  readonly favourites: Favourites | null;
}) {
  const words = say.design;
  const ease = notes.ease ?? (hasGarment && notes.basis !== 'body' ? 'garment' : 'classic');
  const offered: readonly EaseNotes[] = [
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
        options={offered.map((value) => ({ value, label: words.ease[value] }))}
        onValue={(to) => writeDesign((it) => ({ ...it, ease: to }))}
      />
      <div className={styles.place}>
        <EaseDetail ease={ease} notes={notes} tape={tape} favourites={favourites} />
      </div>
      <p className={`${textStyles.hint} ${styles.outcome}`}>{outcome}</p>
    </div>
  );
}

function EaseDetail({
  ease,
  notes,
  tape,
  favourites,
}: {
  readonly ease: EaseNotes;
  readonly notes: DesignNotes;
  readonly tape: Tape;
  readonly favourites: Favourites | null;
}) {
  const words = say.design;
  const place = useId();
  switch (ease) {
    case 'garment':
      return (
        <LengthField
          label={words.easeChange}
          quantity="signed"
          typed={notes.change}
          tape={tape}
          whenEmpty={words.easeChangeHint}
          onTyped={(change) => writeDesign((it) => ({ ...it, ease, change }))}
        />
      );
    case 'favourites':
      return (
        <p className={textStyles.hint}>
          {favourites === null
            ? words.noFavourites
            : words.favourites(favourites.count, showSigned(favourites.mean, tape), showLength(favourites.sd, tape))}
        </p>
      );
    case 'own':
      return (
        <LengthField
          label={words.ownEase}
          quantity="signed"
          typed={notes.ownEase}
          tape={tape}
          whenEmpty={words.ownEaseHint}
          onTyped={(ownEase) => writeDesign((it) => ({ ...it, ownEase }))}
        />
      );
    case 'very-close':
    case 'close':
    case 'classic':
    case 'loose':
    case 'oversized':
      return (
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
      );
  }
}
