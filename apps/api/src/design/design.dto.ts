import {
  BASES,
  HEMS,
  LENGTHS,
  NECKLINES,
  SILHOUETTES,
  type Basis,
  type Hem,
  type LengthChoice,
  type Neckline,
  type Silhouette,
} from '#fit';
import { CONSTRUCTIONS, type Construction } from '#garment';
import { LayerDto } from '../garments/layer.dto.ts';
import { ChoiceField, ObjectField } from '../http/fields.ts';
import type { WholeChecked } from '../http/whole-checked.ts';
import { ChosenLengthDto } from '../measures/length.dto.ts';
import { EaseDto, GirthDifferenceDto } from './ease.dto.ts';

const length = (description: string) => ObjectField(() => ChosenLengthDto, { optional: true, description });

/** What the maker chose. What she leaves out, the rules decide. */
export class DesignDto implements WholeChecked {
  @ChoiceField(SILHOUETTES)
  silhouette!: Silhouette;
  @ChoiceField(CONSTRUCTIONS)
  construction!: Construction;
  @ChoiceField(LENGTHS)
  length!: LengthChoice;
  @ChoiceField(NECKLINES)
  neckline!: Neckline;
  @ChoiceField(BASES, { optional: true, default: 'body', description: 'Where the targets come from.' })
  basis?: Basis | null;
  @ChoiceField(HEMS, { optional: true, default: 'straight' })
  hem?: Hem | null;
  @ObjectField(() => EaseDto, { optional: true, description: 'Default: classic, in its middle.' })
  ease?: EaseDto | null;
  @ObjectField(() => GirthDifferenceDto, {
    optional: true,
    description: 'To the garment that fits; default 0, "like this one".',
  })
  easeChange?: GirthDifferenceDto | null;
  @ObjectField(() => LayerDto, { optional: true, description: 'What will be worn beneath, beyond a shirt.' })
  layer?: LayerDto | null;
  @length('Centre-back length of a custom length: finished back neck edge to hem.')
  customLength?: ChosenLengthDto | null;
  @length('Depth of the neck band, and of a vest’s armhole bands.')
  band?: ChosenLengthDto | null;
  @length('Width of a cardigan’s front band.')
  frontBand?: ChosenLengthDto | null;
  @length('How far a cardigan’s front bands overlap; default: their width.')
  overlap?: ChosenLengthDto | null;
  @length('Depth of the rib at hem and cuff.')
  rib?: ChosenLengthDto | null;
  @length('The maker’s own neck, finished: its width.')
  neckWidth?: ChosenLengthDto | null;
  @length('The maker’s own neck, finished: its depth in front.')
  frontNeckDepth?: ChosenLengthDto | null;
  @length('The maker’s own neck, finished: its depth at the back.')
  backNeckDepth?: ChosenLengthDto | null;
  @length('Added at each joined edge of a piece; default none.')
  seamAllowance?: ChosenLengthDto | null;

  problems() {
    const lacks = this.length === 'custom' && this.customLength == null;
    return lacks ? [{ pointer: '/customLength', detail: 'is missing: a custom length needs it' }] : [];
  }
}
