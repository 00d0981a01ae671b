import { BASES, type Basis } from '#fit';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import { writeDesign } from './write-design.ts';

/** What the numbers are reckoned from; left to what is known where she does not say. */
export function BasisField({ basis }: { readonly basis: Basis | null }) {
  const words = say.design.basis;
  return (
    <Select
      label={words.legend}
      value={basis ?? ''}
      options={[{ value: '', label: words.unsaid }, ...BASES.map((value) => ({ value, label: words[value] }))]}
      onValue={(to) => writeDesign((it) => ({ ...it, basis: to === '' ? null : to }))}
    />
  );
}
