import { memo, useState, type ReactNode } from 'react';
import type { BodyDimension, Figure } from '#body';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { WrittenMeasure } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { Ask, type Question } from './Ask.tsx';
import { fieldId } from './field-id.ts';
import { TapeDrawing } from './TapeDrawing.tsx';

/** One measure: where the tape runs, the line to write on, and beneath it how, or a question. Both have the same place, so nothing moves. */
export const MeasureRow = memo(function MeasureRow({
  dimension,
  figure,
  written,
  tape,
  pencilled,
  question,
  onTyped,
  onRepair,
  onConfirm,
}: {
  readonly dimension: BodyDimension;
  readonly figure: Figure;
  readonly written: WrittenMeasure | undefined;
  readonly tape: Tape;
  /** What is taken where it was skipped. */
  readonly pencilled: ReactNode;
  readonly question: Question<BodyDimension> | null;
  readonly onTyped: (dimension: BodyDimension, typed: Typed) => void;
  readonly onRepair: (to: Question<BodyDimension>['repairs'][number]['to']) => void;
  readonly onConfirm: (dimension: BodyDimension) => void;
}) {
  const [writing, setWriting] = useState(false);
  const how = say.taking[dimension];
  return (
    <li className="measure">
      <TapeDrawing dimension={dimension} figure={figure} how={how} />
      <div onFocus={() => setWriting(true)} onBlur={() => setWriting(false)}>
        <LengthField
          id={fieldId(dimension)}
          label={say.dimension[dimension]}
          typed={written}
          tape={tape}
          quantity={dimension === 'weight' ? 'mass' : 'length'}
          onTyped={(typed) => onTyped(dimension, typed)}
          whenEmpty={pencilled ?? ' '}
        />
      </div>
      <div className="beside">
        {question === null || writing ? (
          <p>{how}</p>
        ) : (
          <Ask
            question={question}
            onRepair={(to) => {
              onRepair(to);
              document.getElementById(fieldId(dimension))?.focus();
            }}
            onConfirm={() => {
              onConfirm(dimension);
              document.getElementById(fieldId(dimension))?.focus();
            }}
          />
        )}
      </div>
    </li>
  );
});
