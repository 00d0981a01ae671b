import { memo } from 'react';
import type { BodyDimension } from '#body';
import { RATIO_CHECKS, type Check } from '#target-sheet';
import { fieldId } from '../notebook/field-id.ts';
import { NumberTable, type NumberRow } from '../drawing/Drawing.tsx';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { changeWithUndo } from '../state/undo.ts';
import { Folded } from '../ui/Folded.tsx';
import { showLength, showPercent } from '../reading/numbers.ts';
import { applyRemedy } from '../compute/apply-remedy.ts';
import textStyles from '../ui/text.module.css';
import styles from './Checks.module.css';

const ORDER = ['fails', 'unknown', 'poor', 'tight'] as const;

/** The checks that need attention, worst first, each with buttons for its remedies; the passed checks in one line. */
export const Checks = memo(function Checks({
  checks,
  tape,
}: {
  readonly checks: readonly Check[];
  readonly tape: Tape;
}) {
  const words = say.sheet.checks;
  const open = ORDER.flatMap((verdict) => checks.filter((check) => check.verdict === verdict));
  const fine = checks.filter(({ verdict }) => verdict === 'fine');
  return (
    <section id="checks" aria-labelledby="checks-title">
      <h3 id="checks-title" tabIndex={-1}>
        {words.title}
      </h3>
      <ul className={styles.checks}>
        {open.map((check) => (
          <OpenCheck key={check.check} check={check} tape={tape} />
        ))}
      </ul>
      {fine.length > 0 && (
        <Folded summary={words.fine(fine.length)}>
          {() => (
            <ul className={styles.checks}>
              {fine.map((check) => (
                <li key={check.check} className={`${styles.check} ${styles.fine}`}>
                  <Verdict check={check} />
                  <p>{check.advice}</p>
                </li>
              ))}
            </ul>
          )}
        </Folded>
      )}
      <Folded className={styles.table} summary={words.all}>
        {() => <CheckTable checks={checks} tape={tape} />}
      </Folded>
    </section>
  );
});

function Verdict({ check }: { readonly check: Check }) {
  const words = say.sheet.checks;
  return (
    <p className={styles.verdict}>
      <strong>{words.verdict[check.verdict]}</strong> {words.name[check.check]}
      {check.comfort && <span className={textStyles.hint}> ({words.comfort})</span>}
    </p>
  );
}

function OpenCheck({ check, tape }: { readonly check: Check; readonly tape: Tape }) {
  const words = say.sheet.checks;
  const { chanceOfFailing: chance } = check;
  const numbers = compared(check, tape);
  return (
    <li className={`${styles.check} ${styles[check.verdict]}`}>
      <Verdict check={check} />
      <p>{check.advice}</p>
      {numbers !== '' && (
        <p className={textStyles.hint}>
          {numbers}{' '}
          {chance !== undefined &&
            chance >= 0.005 &&
            (check.comfort ? words.chanceOfComfort : words.chance)(showPercent(chance))}
        </p>
      )}
      <div className={styles.remedies}>
        {check.remedies?.map(({ text, change }) => (
          <button key={text} type="button" onClick={() => applyCheckRemedy(text, change, tape)}>
            {text}
          </button>
        ))}
        {check.needs?.map((name: BodyDimension) => (
          <a key={name} href={`#${fieldId(name)}`}>
            {words.measure(say.dimension[name])}
          </a>
        ))}
      </div>
    </li>
  );
}

/** Applies a remedy. Its button disappears, so the title of the checks takes the focus first. */
function applyCheckRemedy(text: string, change: Readonly<Record<string, number | string>>, tape: Tape): void {
  document.getElementById('checks-title')?.focus();
  changeWithUndo(say.sheet.checks.done(text), (it) => ({ ...it, design: applyRemedy(it.design, change, tape) }));
}

/** The comparison that a check makes, with its numbers; empty where it has none. */
function compared({ check, need, have }: Check, tape: Tape): string {
  if (need === undefined || have === undefined) return '';
  const show = (value: number): string => (RATIO_CHECKS.includes(check) ? showPercent(value) : showLength(value, tape));
  return say.sheet.checks.compared[check](show(need), show(have));
}

function CheckTable({ checks, tape }: { readonly checks: readonly Check[]; readonly tape: Tape }) {
  const words = say.sheet.checks;
  return (
    <NumberTable
      caption={words.title}
      columns={[words.column.check, words.column.verdict, words.column.compared, words.column.chance]}
      rows={checks.map((check): NumberRow => [
        check.comfort ? `${words.name[check.check]} (${words.comfort})` : words.name[check.check],
        words.verdict[check.verdict],
        compared(check, tape),
        check.chanceOfFailing === undefined ? '' : showPercent(check.chanceOfFailing),
      ])}
    />
  );
}
