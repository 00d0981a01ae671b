import { Select } from '../field/Select.tsx';
import { TextField } from '../field/TextField.tsx';
import { Tick } from '../field/Tick.tsx';
import { say } from '../messages.ts';
import { nameOf } from './name-of.ts';
import { OURS, type NamedThing } from './planner-notes.ts';
import buttonStyles from '../ui/buttons.module.css';
import textStyles from '../ui/text.module.css';
import styles from './NameRows.module.css';

/** What the planner calls the fields of a sheet, one row for each. */
export function NameRows({
  names,
  csv,
  onNames,
}: {
  readonly names: readonly NamedThing[];
  readonly csv: boolean;
  readonly onNames: (names: readonly NamedThing[]) => void;
}) {
  const words = say.send.names;
  const free = OURS.filter((ours) => !names.some((name) => name.ours === ours));
  const change = (index: number, how: Partial<NamedThing>): void =>
    onNames(names.map((name, at) => (at === index ? { ...name, ...how } : name)));
  const add = (): void => {
    const [ours] = free;
    if (ours !== undefined) onNames([...names, { ours, theirs: '', required: false }]);
  };
  return (
    <fieldset className={styles.names}>
      <legend>{words.legend}</legend>
      <p className={textStyles.hint}>{csv ? words.csv : words.flat}</p>
      <ul>
        {names.map((name, index) => (
          <li key={index}>
            <Select
              label={words.ours}
              options={[name.ours, ...free].map((value) => ({ value, label: nameOf(value) }))}
              value={name.ours}
              onValue={(ours) => change(index, { ours })}
            />
            <TextField
              label={csv ? words.column : words.pointer}
              value={name.theirs}
              onValue={(theirs) => change(index, { theirs })}
            />
            <Tick label={words.required} value={name.required} onValue={(required) => change(index, { required })} />
            <button
              type="button"
              className={buttonStyles.quiet}
              aria-label={words.removeOne(nameOf(name.ours))}
              onClick={() => onNames(names.filter((_, at) => at !== index))}
            >
              {words.remove}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" onClick={add}>
        {words.add}
      </button>
    </fieldset>
  );
}
