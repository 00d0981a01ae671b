import { memo } from 'react';
import type { GarmentDimension } from '#garment';
import { QuestionBox } from '../field/QuestionBox.tsx';
import type { ValueQuestion } from '../compute/value-question.ts';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { LETTERS } from './FlatDrawing.tsx';
import { confirmFlat, doubtFlat, writeFlat } from './write-garment.ts';
import buttonStyles from '../ui/buttons.module.css';

/** The field for one measurement of the sweater laid flat, with a question beneath when the field does not have the focus. */
export const FlatRow = memo(function FlatRow({
  name,
  typed,
  tape,
  confirmed,
  question,
  onWriting,
}: {
  readonly name: GarmentDimension;
  readonly typed: Typed | undefined;
  readonly tape: Tape;
  /** She said that it is right as it is. */
  readonly confirmed: boolean;
  /** Null while the field has the focus. */
  readonly question: ValueQuestion<GarmentDimension> | null;
  readonly onWriting: (name: GarmentDimension) => void;
}) {
  const id = `flat-${name}`;
  const back = (): void => document.getElementById(id)?.focus();
  return (
    <li>
      <div onFocus={({ target }) => target.id === id && onWriting(name)}>
        <LengthField
          id={id}
          label={say.garment.dimension[name]}
          mark={LETTERS[name]}
          typed={typed}
          tape={tape}
          whenEmpty={say.garment.how[name]}
          ask={
            question === null && confirmed ? (
              <>
                {say.garment.confirmed}{' '}
                <button
                  type="button"
                  className={buttonStyles.quiet}
                  onClick={() => {
                    doubtFlat(name);
                    back();
                  }}
                >
                  {say.garment.askAgain}
                </button>
              </>
            ) : (
              question && (
                <QuestionBox
                  question={question}
                  onRepair={(to) => {
                    writeFlat(to);
                    back();
                  }}
                  onConfirm={() => {
                    confirmFlat(name);
                    back();
                  }}
                />
              )
            )
          }
          onTyped={(to) => writeFlat({ [name]: to })}
        />
      </div>
    </li>
  );
});
