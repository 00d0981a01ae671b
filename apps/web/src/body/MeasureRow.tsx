import { memo, useState, type ReactNode } from 'react';
import type { BodyDimension, Figure } from '#body';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { WrittenMeasure } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { read } from '../reading/read.ts';
import { QuestionBox } from '../field/QuestionBox.tsx';
import type { ValueQuestion } from '../compute/value-question.ts';
import { fieldId } from '../notebook/field-id.ts';
import { TapeDrawing } from './TapeDrawing.tsx';
import { confirmMeasure, repairMeasures, writeMeasure } from './write-body.ts';
import textStyles from '../ui/text.module.css';
import styles from './MeasureRow.module.css';

/** One measurement: the drawing of the tape, the field, and beneath it how to measure, or a question in the same place, so that nothing moves. */
export const MeasureRow = memo(function MeasureRow({
  dimension,
  figure,
  written,
  tape,
  pencilled,
  question,
}: {
  readonly dimension: BodyDimension;
  readonly figure: Figure;
  readonly written: WrittenMeasure | undefined;
  readonly tape: Tape;
  /** Its estimate, where it is missing. */
  readonly pencilled: string | null;
  readonly question: ValueQuestion<BodyDimension> | null;
}) {
  const [writing, setWriting] = useState(false);
  const quantity = dimension === 'weight' ? 'mass' : 'length';
  const how = say.taking(dimension);
  const reading = read(written, quantity);
  const why = reading.is === 'wrong' && !writing ? reading.why : null;
  const whyId = `${fieldId(dimension)}-why`;
  return (
    <li className={styles.measure}>
      <TapeDrawing dimension={dimension} figure={figure} how={how} />
      <div onFocus={() => setWriting(true)} onBlur={() => setWriting(false)}>
        <LengthField
          id={fieldId(dimension)}
          label={say.dimension[dimension]}
          typed={written}
          tape={tape}
          quantity={quantity}
          onTyped={(typed) => writeMeasure(dimension, typed)}
          whenEmpty={beneath(pencilled)}
          whyElsewhere={why !== null}
          describedBy={whyId}
        />
      </div>
      <div className={styles.beside} id={whyId}>
        {why !== null ? (
          <p className={textStyles.wrong}>{why}</p>
        ) : question === null || writing ? (
          <p>{how}</p>
        ) : (
          <QuestionBox
            question={question}
            onRepair={(to) => {
              repairMeasures(to);
              document.getElementById(fieldId(dimension))?.focus();
            }}
            onConfirm={() => {
              confirmMeasure(dimension);
              document.getElementById(fieldId(dimension))?.focus();
            }}
          />
        )}
      </div>
    </li>
  );
});

function beneath(pencilled: string | null): ReactNode {
  if (pencilled === '') return ' ';
  return pencilled === null ? say.body.noEstimate : <em className={styles.estimate}>{pencilled}</em>;
}
