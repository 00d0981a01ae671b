import { memo, useMemo } from 'react';
import type { BodyModel } from '#body';
import { MADE_MEASURES } from '#fit';
import type { PieceDimension, TargetSheet } from '#target-sheet';
import { NumberTable, type NumberRow } from '../drawing/Drawing.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { updateNotebook, currentNotebook } from '../state/notebook.ts';
import { changeWithUndo } from '../state/undo.ts';
import { Folded } from '../ui/Folded.tsx';
import { showDifference, showLength } from '../reading/numbers.ts';
import { madeKey, toMade } from '../compute/to-made.ts';
import { plannedSheet } from '../compute/compute.ts';
import textStyles from '../ui/text.module.css';
import buttonStyles from '../ui/buttons.module.css';
import fieldGrid from '../ui/field-grid.module.css';

/** The finished pieces: their measured dimensions, and what the other pieces should be now. */
export const MadeSection = memo(function MadeSection({
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
  // The sheet changes whenever the notebook does.
  const planned = useMemo(() => (anyMade ? plannedSheet(currentNotebook(), model) : sheet), [anyMade, sheet, model]);
  if (planned === null) return <p>{words.none}</p>;
  // Its button is disabled afterwards, so the title takes the focus first.
  const clear = (): void => {
    document.getElementById('made-title')?.focus({ preventScroll: true });
    changeWithUndo(words.cleared, (it) => ({ ...it, made: {} }));
  };
  return (
    <>
      <p className={textStyles.lead}>{words.lead}</p>
      {planned.pieces
        .map((piece) => ({
          piece: piece.piece,
          dimensions: piece.dimensions.filter(({ name }) => MADE_MEASURES.includes(madeKey(piece.piece, name))),
        }))
        .filter(({ dimensions }) => dimensions.length > 0)
        .map(({ piece, dimensions }) => (
          <fieldset key={piece}>
            <legend>{say.sheet.pieces.piece[piece]}</legend>
            <div className={fieldGrid.grid}>
              {dimensions.map(({ name, value }: PieceDimension) => (
                <LengthField
                  key={name}
                  label={say.measure[name]}
                  typed={made[madeKey(piece, name)]}
                  tape={tape}
                  whenEmpty={value === null ? ' ' : words.planned(showLength(value, tape))}
                  onTyped={(typed) =>
                    updateNotebook((it) => ({ ...it, made: withMade(it.made, madeKey(piece, name), typed) }))
                  }
                />
              ))}
            </div>
          </fieldset>
        ))}
      <button type="button" className={buttonStyles.quiet} disabled={!anyMade} onClick={clear}>
        {words.clear}
      </button>
      <Moved planned={planned} now={sheet ?? planned} tape={tape} />
    </>
  );
});

function withMade(made: Notebook['made'], key: string, typed: Notebook['made'][string]): Notebook['made'] {
  const { [key]: _, ...rest } = made;
  return typed.text === '' ? rest : { ...rest, [key]: typed };
}

/** Smaller differences do not show on a tape. */
const SEEN_MM = 0.5;

/** Every dimension that changed, piece by piece. */
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
      return [[label, showLength(before, tape), showLength(value, tape), showDifference(before, value, tape)]];
    }),
  );
  const { measure, before, now: after, difference } = words.column;
  return (
    <Folded summary={words.moved(rows.length)}>
      {() =>
        rows.length === 0 ? (
          <p>{words.same}</p>
        ) : (
          <NumberTable caption={words.now} columns={[measure, before, after, difference]} rows={rows} />
        )
      }
    </Folded>
  );
}
