import { BODY_DIMENSIONS, type BodyProfile } from '#body';
import { NumberTable } from '../drawing/Drawing.tsx';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { Folded } from '../page/Folded.tsx';
import { shownValue } from './shown-value.ts';

/** Every body measure in one table: what was written, what is reckoned with, and how it was come by. */
export function BodyTable({
  notes,
  profile,
  tape,
}: {
  readonly notes: BodyNotes;
  readonly profile: BodyProfile | null;
  readonly tape: Tape;
}) {
  const { column, measured, tableTitle } = say.body;
  return (
    <Folded className="numbers" summary={tableTitle}>
      {() => (
        <NumberTable
          caption={notes.name || tableTitle}
          columns={[column.measure, column.value, column.range, column.how]}
          rows={BODY_DIMENSIONS.map((name) => {
            const found = shownValue(profile, name, tape);
            if (found === null) return [say.dimension[name], say.none, '', ''];
            const range = `${found.low} ${say.to} ${found.high}`;
            return [say.dimension[name], found.value, range, found.measured ? measured : found.from];
          })}
        />
      )}
    </Folded>
  );
}
