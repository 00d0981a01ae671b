import { text } from '#advice-text';
import { BODY_DIMENSIONS, type BodyDimension, type BodyProfile } from '#body';
import { isMeasured } from '#measure';
import { NumberTable } from '../drawing/Drawing.tsx';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { Folded } from '../ui/Folded.tsx';
import { shownValue } from '../reading/shown-value.ts';
import styles from './BodyTable.module.css';

/** Every body measurement in one table, with its range and how it was obtained; the sources of the estimates stand beneath. */
export function BodyTable({
  notes,
  profile,
  tape,
}: {
  readonly notes: BodyNotes;
  readonly profile: BodyProfile | null;
  readonly tape: Tape;
}) {
  const { column, how, tableTitle } = say.body;
  return (
    <Folded summary={tableTitle}>
      {() => (
        <>
          <NumberTable
            caption={notes.name || tableTitle}
            columns={[column.measure, column.value, column.sure]}
            rows={BODY_DIMENSIONS.map((name) => {
              const found = shownValue(profile, name, tape);
              if (found === null) return [say.dimension[name], say.none, ''];
              const range = `${found.bare[1]} ${say.to} ${found.high}`;
              const sure = `${how[found.how]}, ${range}`;
              const isWide = profile?.values[name]?.outsideSurveys ?? false;
              return [say.dimension[name], found.value, isWide ? say.body.outsideSurveys(sure) : sure];
            })}
          />
          <Sources profile={profile} tape={tape} />
        </>
      )}
    </Folded>
  );
}

/** The sources of the estimates, each shown once. */
function Sources({ profile, tape }: { readonly profile: BodyProfile | null; readonly tape: Tape }) {
  const bySource = new Map<string, BodyDimension[]>();
  for (const name of BODY_DIMENSIONS) {
    const found = profile?.values[name];
    if (found === undefined || isMeasured(found.how)) continue;
    const from = text('source', found.from, { tape });
    bySource.set(from, [...(bySource.get(from) ?? []), name]);
  }
  return (
    <ul className={styles.sources}>
      {[...bySource].map(([from, names]) => (
        <li key={from}>
          {bySource.size === 1 ? say.body.guessedAre : names.map((name) => say.dimension[name]).join(', ')}: {from}.
        </li>
      ))}
    </ul>
  );
}
