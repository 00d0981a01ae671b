import { useState } from 'react';
import type { DimensionName } from '#fit';
import { ASSEMBLED_NAMES } from '#fit';
import type { TargetSheet } from '#target-sheet';
import { NumberTable, type NumberRow } from '../drawing/Drawing.tsx';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, showSigned } from '../reading/numbers.ts';
import { finished } from '../reckon/worn-measures.ts';
import { fetchInto, titleOf } from './KeptList.tsx';
import type { KeptSheet } from './kept-sheet.ts';

const NOW = '';

/** Two sheets and what differs between them. */
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
  const options = [
    { value: NOW, label: words.now },
    ...sheets.map((sheet) => ({ value: sheet.key, label: titleOf(sheet) })),
  ];
  const [left, right] = [sheetOf(one), sheetOf(other)];
  return (
    <section className="side-by-side" aria-labelledby="side-title">
      <h3 id="side-title">{words.title}</h3>
      <div className="few">
        <Select label={words.one} options={options} value={one} onValue={pick(setOne)} />
        <Select label={words.other} options={options} value={other} onValue={pick(setOther)} />
      </div>
      {left === null || right === null ? (
        <p>{say.keep.missing}</p>
      ) : (
        <Differences left={left} right={right} tape={tape} />
      )}
    </section>
  );
}

function Differences({
  left,
  right,
  tape,
}: {
  readonly left: TargetSheet;
  readonly right: TargetSheet;
  readonly tape: Tape;
}) {
  const words = say.keep.side;
  const show = (mm: number | null): string => (mm === null ? '–' : showLength(mm, tape));
  const lengths = ASSEMBLED_NAMES.flatMap((name: DimensionName): NumberRow[] => {
    const [a, b] = [finished(left, name), finished(right, name)];
    if (a === null && b === null) return [];
    return [[say.measure[name], show(a), show(b), a === null || b === null ? '' : showSigned(b - a, tape)]];
  });
  const choice = (name: string, of: (sheet: TargetSheet) => string): NumberRow => [name, of(left), of(right), ''];
  const design = say.design;
  const rows: NumberRow[] = [
    choice(design.silhouette.legend, ({ design: { silhouette } }) => design.silhouette[silhouette]),
    choice(design.construction, ({ design: { construction } }) => say.construction[construction]),
    choice(design.neckline.legend, ({ design: { neckline } }) => design.neckline[neckline]),
    choice(design.length.legend, ({ design: { length } }) => design.length[length]),
    ...lengths,
  ];
  const titles = [left, right].map((sheet) => sheet.title || say.keep.untitled);
  return (
    <NumberTable caption={words.title} columns={[say.body.column.measure, ...titles, words.difference]} rows={rows} />
  );
}
