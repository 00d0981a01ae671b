import { memo } from 'react';
import type { Check, TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import { finishedDimension } from '../compute/finished-dimension.ts';
import textStyles from '../ui/text.module.css';
import styles from './Headline.module.css';

const QUIET: readonly Check['verdict'][] = ['fine', 'n/a'];
/** The number of checks that need attention. */
const openCheckCount = (sheet: TargetSheet): number =>
  sheet.checks.filter(({ verdict }) => !QUIET.includes(verdict)).length;

/** The most important numbers, and how many checks need attention; always in the same place. */
export const Headline = memo(function Headline({
  sheet,
  tape,
}: {
  readonly sheet: TargetSheet | null;
  readonly tape: Tape;
}) {
  const words = say.sheet;
  const show = (mm: number | null): string => (mm === null ? '–' : showLength(mm, tape));
  const numbers = (['chest-width', 'centre-back-length', 'sleeve-length'] as const).map(
    (name) => sheet && finishedDimension(sheet, name),
  );
  const [width = null, length = null, sleeve = null] = numbers;
  const look = sheet === null ? null : openCheckCount(sheet);
  return (
    <dl className={styles.headline}>
      {(
        [
          [words.headline.width, width],
          [words.headline.length, length],
          [words.headline.sleeve, sleeve],
        ] as const
      ).map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{show(value)}</dd>
        </div>
      ))}
      <div className={styles.checks}>
        <dt className={textStyles.visuallyHidden}>{words.checks.title}</dt>
        <dd>{look === null ? words.notYet : look === 0 ? words.look(0) : <a href="#checks">{words.look(look)}</a>}</dd>
      </div>
    </dl>
  );
});
