import { memo, useRef } from 'react';
import type { AnyDimension, TargetSheet, Term } from '#target-sheet';
import { Wide } from '../ui/Wide.tsx';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { Folded } from '../ui/Folded.tsx';
import { useWhileSeen } from '../ui/use-while-seen.ts';
import { showExactly, showLength } from '../reading/numbers.ts';
import textStyles from '../ui/text.module.css';
import styles from './Numbers.module.css';

/** Every dimension of the sheet; each expands to the terms of its sum. */
export const Numbers = memo(function Numbers({ sheet, tape }: { readonly sheet: TargetSheet; readonly tape: Tape }) {
  const words = say.sheet.numbers;
  return (
    <section aria-labelledby="numbers-title">
      <h3 id="numbers-title">{words.title}</h3>
      <p className={textStyles.lead}>{words.lead}</p>
      <Group title={words.assembled} dimensions={sheet.assembled} tape={tape} />
      {sheet.pieces.map((piece) => (
        <Group
          key={piece.piece}
          title={`${say.sheet.pieces.piece[piece.piece]}, ${say.sheet.pieces.make(piece.make)}`}
          dimensions={piece.dimensions}
          tape={tape}
        />
      ))}
    </section>
  );
});

function Group({
  title,
  dimensions,
  tape,
}: {
  readonly title: string;
  readonly dimensions: readonly AnyDimension[];
  readonly tape: Tape;
}) {
  const place = useRef<HTMLElement>(null);
  return (
    <section ref={place} className={styles.group}>
      <h4>{title}</h4>
      <Listed dimensions={useWhileSeen(place, dimensions)} tape={tape} />
    </section>
  );
}

const Listed = memo(function Listed({
  dimensions,
  tape,
}: {
  readonly dimensions: readonly AnyDimension[];
  readonly tape: Tape;
}) {
  return (
    <ul>
      {dimensions.map((dimension) => (
        <li key={dimension.name}>
          <One dimension={dimension} tape={tape} />
        </li>
      ))}
    </ul>
  );
});

function One({ dimension, tape }: { readonly dimension: AnyDimension; readonly tape: Tape }) {
  const words = say.sheet.numbers;
  const { name, value, low, high, because, noAdvice } = dimension;
  if (value === null)
    return (
      <p className={styles.notGiven}>
        {say.measure[name]}:{' '}
        {noAdvice && noAdvice.needs.length > 0
          ? words.needs(noAdvice.needs.map((need) => say.dimension[need]).join(', '))
          : words.notGiven(noAdvice?.reason ?? say.none)}
      </p>
    );
  const asMade =
    'asMade' in dimension && dimension.asMade !== null && Math.abs(dimension.asMade - value) > 0.5
      ? dimension.asMade
      : null;
  return (
    <Folded
      className={styles.dimension}
      summary={
        <>
          <span>{say.measure[name]}</span>
          <span className={styles.value}>{showLength(value, tape)}</span>
          <span className={styles.range}>
            {low === undefined || high === undefined
              ? ''
              : `${showLength(low, tape)} ${say.to} ${showLength(high, tape)}`}
          </span>
        </>
      }
    >
      {() => (
        <>
          <Sum because={because} value={value} u={dimension.u} tape={tape} name={say.measure[name]} />
          {asMade !== null && (
            <p>
              {words.asMade}: {showLength(asMade, tape)}
            </p>
          )}
        </>
      )}
    </Folded>
  );
}

/** The terms of a dimension, with more decimals than a tape shows, so that they visibly add up. */
function Sum({
  because,
  value,
  u,
  tape,
  name,
}: {
  readonly because: readonly Term[];
  readonly value: number;
  readonly u: number | undefined;
  readonly tape: Tape;
  readonly name: string;
}) {
  const words = say.sheet.numbers;
  return (
    <Wide label={`${name} ${words.sum}`}>
      <table className={styles.sum}>
        <caption>
          {name} {words.sum}
        </caption>
        <thead>
          <tr>
            <th scope="col">{words.term}</th>
            <th scope="col">{words.value}</th>
            <th scope="col">{words.from}</th>
          </tr>
        </thead>
        <tbody>
          {because.map((term, i) => (
            <tr key={i}>
              <th scope="row">{term.term}</th>
              <td>{showExactly(term.value, tape)}</td>
              <td>{term.from}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{words.total}</th>
            <td>{showExactly(value, tape)}</td>
            <td>{u === undefined ? '' : words.sure(showLength(u, tape))}</td>
          </tr>
        </tfoot>
      </table>
    </Wide>
  );
}
