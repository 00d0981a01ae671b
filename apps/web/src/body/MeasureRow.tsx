import { memo, type ReactNode } from 'react';
import type { BodyDimension, Figure } from '#body';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { WrittenMeasure } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { TapeDrawing } from './TapeDrawing.tsx';

/** A question about a value, and what it would become. */
export interface Question {
  readonly text: string;
  readonly repairs: readonly { readonly label: string; readonly to: Readonly<Partial<Record<BodyDimension, Typed>>> }[];
}

export const fieldId = (dimension: BodyDimension): string => `measure-${dimension}`;

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
  /** The estimate in words, where it was skipped. */
  readonly pencilled: string | null;
  readonly question: Question | null;
  readonly onTyped: (dimension: BodyDimension, typed: Typed) => void;
  readonly onRepair: (to: Question['repairs'][number]['to']) => void;
  readonly onConfirm: (dimension: BodyDimension) => void;
}) {
  const how = say.taking[dimension];
  return (
    <li className="measure">
      <TapeDrawing dimension={dimension} figure={figure} how={how} />
      <LengthField
        id={fieldId(dimension)}
        label={say.dimension[dimension]}
        typed={written}
        tape={tape}
        quantity={dimension === 'weight' ? 'mass' : 'length'}
        onTyped={(typed) => onTyped(dimension, typed)}
        whenEmpty={pencilled === null ? ' ' : <Pencilled>{pencilled}</Pencilled>}
      />
      <div className="beside">
        {question === null ? (
          <p>{how}</p>
        ) : (
          <div className="question">
            <p>{question.text}</p>
            {question.repairs.map(({ label, to }) => (
              <button key={label} type="button" onClick={() => onRepair(to)}>
                {label}
              </button>
            ))}
            <button type="button" className="quiet" onClick={() => onConfirm(dimension)}>
              {say.body.right}
            </button>
          </div>
        )}
      </div>
    </li>
  );
});

/** A value nobody measured: in pencil, with a dashed line under it and the word "about". */
export function Pencilled({ children }: { readonly children: ReactNode }) {
  return <em className="pencilled">{children}</em>;
}
