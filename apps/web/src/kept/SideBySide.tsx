import { useState } from 'react';
import type { DimensionName } from '#fit';
import { ASSEMBLED_NAMES } from '#fit';
import type { TargetSheet } from '#target-sheet';
import { NumberTable, type NumberRow } from '../drawing/Drawing.tsx';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showDifference, showLength } from '../reading/numbers.ts';
import { finishedDimension } from '../compute/finished-dimension.ts';
import { choicesOf } from './choices.ts';
import { fetchInto } from './KeptList.tsx';
import type { KeptSheet } from '../notebook/kept-sheet.ts';
import { distinctNames } from './distinct-names.ts';
import styles from './SideBySide.module.css';

const NOW = '';

/** Two sheets and their differences. */
export function SideBySide({
  sheets,
  now,
  tape,
}: {
  readonly sheets: readonly KeptSheet[];
  readonly now: TargetSheet | null;
  readonly tape: Tape;
}) {
  const words = say.keep.side;
  const [one, setOne] = useState(NOW);
  const [chosen, setOther] = useState<string | null>(null);
  const other = sheets.some(({ key }) => key === chosen) ? (chosen ?? NOW) : (sheets[0]?.key ?? NOW);
  if (sheets.length === 0) return null;
  const sheetOf = (key: string): TargetSheet | null =>
    key === NOW ? now : (sheets.find((sheet) => sheet.key === key)?.sheet ?? null);
  const pick = (set: (key: string) => void) => (key: string) => {
    set(key);
    const kept = sheets.find((sheet) => sheet.key === key);
    if (kept) void fetchInto(kept);
  };
  const names = distinctNames(sheets, tape);
  const options = [
    { value: NOW, label: words.now },
    ...sheets.map(({ key }, i) => ({ value: key, label: names[i]?.line ?? '' })),
  ];
  const [left, right] = [sheetOf(one), sheetOf(other)];
  const titles = [one, other].map((key) => options.find(({ value }) => value === key)?.label ?? '');
  return (
    <section aria-labelledby="side-title">
      <h3 id="side-title">{words.title}</h3>
      <div className={styles.sheets}>
        <Select label={words.one} options={options} value={one} onValue={pick(setOne)} />
        <Select label={words.other} options={options} value={other} onValue={pick(setOther)} />
      </div>
      {left === null || right === null ? (
        <p>{say.keep.missing}</p>
      ) : (
        <Differences left={left} right={right} titles={titles} tape={tape} />
      )}
    </section>
  );
}

function Differences({
  left,
  right,
  titles,
  tape,
}: {
  readonly left: TargetSheet;
  readonly right: TargetSheet;
  readonly titles: readonly string[];
  readonly tape: Tape;
}) {
  const words = say.keep.side;
  const show = (mm: number | null): string => (mm === null ? '–' : showLength(mm, tape));
  const lengths = ASSEMBLED_NAMES.flatMap((name: DimensionName): NumberRow[] => {
    const [a, b] = [finishedDimension(left, name), finishedDimension(right, name)];
    if (a === null && b === null) return [];
    return [[say.measure[name], show(a), show(b), a === null || b === null ? '' : showDifference(a, b, tape)]];
  });
  const theirs = choicesOf(right, tape);
  const choices = choicesOf(left, tape).map(([name, choice], i): NumberRow => [name, choice, theirs[i]?.[1] ?? '', '']);
  return (
    <NumberTable
      caption={words.title}
      columns={[say.body.column.measure, ...titles, words.difference]}
      rows={[...choices, ...lengths]}
    />
  );
}
