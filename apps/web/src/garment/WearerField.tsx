import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import { openEntry, type Collection } from '../notebook/collection.ts';
import { NOBODY, type BodyNotes } from '../notebook/notebook.ts';
import { writeGarment } from './write-garment.ts';
import textStyles from '../ui/text.module.css';

/** Whom a sweater fits, or that it counts for nobody. Where that was not said, it is the only body, or is left open. */
export function WearerField({
  wearer,
  bodies,
}: {
  readonly wearer: string | null;
  readonly bodies: Collection<BodyNotes>;
}) {
  const words = say.garment;
  const { entries } = bodies;
  const isSaid = wearer === NOBODY || entries.some(({ key }) => key === wearer);
  const unsaid = entries.length === 1 ? openEntry(bodies).key : '';
  const options = [
    ...entries.map(({ key, notes }, place) => ({
      value: key,
      label: notes.name.trim() || words.wearer.unnamed(place + 1),
    })),
    { value: NOBODY, label: words.wearer.nobody },
  ];
  const value = isSaid ? wearer! : unsaid;
  const counts = value === '' || value === openEntry(bodies).key;
  return (
    <>
      <Select
        label={words.wearer.legend}
        value={value}
        options={value === '' ? [{ value, label: words.wearer.unsaid }, ...options] : options}
        onValue={(to) => writeGarment((it) => ({ ...it, wearer: to === '' ? null : to }))}
      />
      <p className={textStyles.hint}>{counts ? ' ' : words.notCounted}</p>
    </>
  );
}
