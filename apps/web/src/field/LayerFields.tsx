import { LAYER_SLEEVES } from '#garment';
import { Choice } from './Choice.tsx';
import { LengthField } from './LengthField.tsx';
import { say } from '../messages.ts';
import { empty } from '../notebook/blank.ts';
import type { LayerNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { isNoThickness } from '../compute/to-garment.ts';
import styles from './LayerFields.module.css';

/** What is worn beneath, beyond a shirt. */
export function LayerFields({
  legend,
  layer,
  tape,
  onLayer,
}: {
  readonly legend: string;
  readonly layer: LayerNotes | null;
  readonly tape: Tape;
  readonly onLayer: (layer: LayerNotes | null) => void;
}) {
  return (
    <div className={styles.layer}>
      <Choice
        legend={legend}
        value={layer === null ? 'none' : 'some'}
        options={[
          { value: 'none', label: say.layer.none },
          { value: 'some', label: say.layer.some },
        ]}
        onValue={(value) => onLayer(value === 'none' ? null : (layer ?? { sleeves: 'long', thickness: empty(tape) }))}
      />
      {layer !== null && (
        <>
          <LengthField
            label={say.layer.thickness}
            quantity="small"
            typed={layer.thickness}
            tape={tape}
            leftOut={isNoThickness(layer.thickness) ? say.garment.noFabric : undefined}
            onTyped={(thickness) => onLayer({ ...layer, thickness })}
          />
          <Choice
            legend={say.layer.legend}
            value={layer.sleeves}
            options={LAYER_SLEEVES.map((value) => ({ value, label: say.layer.sleeves[value] }))}
            onValue={(sleeves) => onLayer({ ...layer, sleeves })}
          />
        </>
      )}
    </div>
  );
}
