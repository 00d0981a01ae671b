import type { BodyModel } from '#body';
import { MADE_MEASURES, type PieceDimension } from '#fit';
import type { TargetSheet } from '#target-sheet';
import { useMemo } from 'react';
import { NumberTable, type NumberRow } from '../drawing/Drawing.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { change, notebook, takeAway } from '../notebook/use-notebook.ts';
import { showLength, showSigned } from '../reading/numbers.ts';
import { madeKey, toMade } from '../reckon/to-made.ts';
import { plannedSheet } from '../reckon/reckoner.ts';

/** Finished pieces: what came out, and what the rest should be now. */
export function MadeSection({
  made,
  sheet,
  model,
  tape,
}: {
  readonly made: Notebook['made'];
  readonly sheet: TargetSheet | null;
  readonly model: BodyModel | null;
  readonly tape: Tape;
}) {
  const words = say.made;
  const anyMade = toMade(made).length > 0;
  // The sheet is another whenever the notebook is.
  const planned = useMemo(() => (anyMade ? plannedSheet(notebook(), model) : sheet), [anyMade, sheet, model]);
  if (planned === null) return <p>{words.none}</p>;
  const clear = (): void =>
    takeAway(
      words.cleared,
      (it) => ({ ...it, made: {} }),
      (it) => ({ ...it, made }),
    );
  return (
    <>
      <p className="lead">{words.lead}</p>
      {planned.pieces
        .map((piece) => ({
          piece: piece.piece,
          dimensions: piece.dimensions.filter(({ name }) => MADE_MEASURES.includes(madeKey(piece.piece, name))),
        }))
        .filter(({ dimensions }) => dimensions.length > 0)
        .map(({ piece, dimensions }) => (
          <fieldset key={piece}>
            <legend>{say.sheet.pieces.piece[piece]}</legend>
            <div className="few">
              {dimensions.map(({ name, value }: PieceDimension) => (
                <LengthField
                  key={name}
                  label={say.measure[name]}
                  typed={made[madeKey(piece, name)]}
                  tape={tape}
                  whenEmpty={value === null ? ' ' : words.planned(showLength(value, tape))}
                  onTyped={(typed) => change((it) => ({ ...it, made: withMade(it.made, madeKey(piece, name), typed) }))}
                />
              ))}
            </div>
          </fieldset>
        ))}
      {anyMade && (
        <>
          {sheet !== null && <Moved planned={planned} now={sheet} tape={tape} />}
          <button type="button" className="quiet" onClick={clear}>
            {words.clear}
          </button>
        </>
      )}
    </>
  );
}

function withMade(made: Notebook['made'], key: string, typed: Notebook['made'][string]): Notebook['made'] {
  const { [key]: _, ...rest } = made;
  return typed.text === '' ? rest : { ...rest, [key]: typed };
}

/** Differences that a tape cannot show are none. */
const SEEN_MM = 0.5;

/** Every measure of every piece that is another now. */
function Moved({
  planned,
  now,
  tape,
}: {
  readonly planned: TargetSheet;
  readonly now: TargetSheet;
  readonly tape: Tape;
}) {
  const words = say.made;
  const rows = now.pieces.flatMap(({ piece, dimensions }) =>
    dimensions.flatMap(({ name, value }): NumberRow[] => {
      const before = planned.pieces.find((it) => it.piece === piece)?.dimensions.find((it) => it.name === name)?.value;
      if (value === null || before == null || Math.abs(value - before) < SEEN_MM) return [];
      const label = `${say.sheet.pieces.piece[piece]}: ${say.measure[name]}`;
      return [[label, showLength(before, tape), showLength(value, tape), showSigned(value - before, tape)]];
    }),
  );
  if (rows.length === 0) return <p role="status">{words.same}</p>;
  const { measure, before, now: after, difference } = words.column;
  return <NumberTable caption={words.now} columns={[measure, before, after, difference]} rows={rows} />;
}
