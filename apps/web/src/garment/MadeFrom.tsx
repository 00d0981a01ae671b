import type { GrowthLearned, TargetSheet } from '#target-sheet';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import type { KeptSheet } from '../notebook/kept-sheet.ts';
import { showPercent } from '../reading/numbers.ts';
import { usePage } from '../state/page-store.ts';
import buttonStyles from '../ui/buttons.module.css';
import textStyles from '../ui/text.module.css';
import { takeGrowth, writeGarment } from './write-garment.ts';

const idOf = ({ stored, key }: KeptSheet): string => stored ?? key;

/** The kept sheet that a sweater was made from, and what it has told since of how its yarn grows. */
export function MadeFrom({
  madeFrom,
  growthSince,
}: {
  readonly madeFrom: string | null;
  readonly growthSince: (sheet: TargetSheet) => GrowthLearned | null;
}) {
  const sheets = usePage(({ keptSheets }) => keptSheets.sheets);
  const words = say.garment.madeFrom;
  if (sheets.length === 0 && madeFrom === null) return null;
  const chosen = sheets.find((kept) => [kept.stored, kept.key].includes(madeFrom));
  const learned = chosen?.sheet ? growthSince(chosen.sheet) : null;
  return (
    <>
      <Select
        label={words.legend}
        value={chosen ? idOf(chosen) : ''}
        options={[
          { value: '', label: words.none },
          ...sheets.map((kept) => ({ value: idOf(kept), label: kept.title || say.sheet.title })),
        ]}
        onValue={(to) => writeGarment((it) => ({ ...it, madeFrom: to === '' ? null : to }))}
      />
      {learned && (learned.across ?? learned.along) && (
        <div className={textStyles.hint} role="status">
          <p>
            {words.learned(
              learned.along && words.longer(showPercent(learned.along.growth), showPercent(learned.along.u)),
              learned.across && words.wider(showPercent(learned.across.growth), showPercent(learned.across.u)),
            )}
          </p>
          <button type="button" className={buttonStyles.quiet} onClick={() => takeGrowth(learned)}>
            {words.take}
          </button>
        </div>
      )}
    </>
  );
}
