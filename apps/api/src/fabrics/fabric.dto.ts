import { CRAFTS, FIBRES, resolveFabric, STITCHES, type Craft, type Fibre, type Stitch } from '#fabric';
import { ChoiceField, NumberField, ObjectField, TextField, WholeNumberField } from '../http/fields.ts';
import type { WholeChecked } from '../http/whole-checked.ts';
import { problemsFrom } from '../measures/in-request.ts';
import { fabricInput } from './fabric-input.ts';
import { ThicknessDto } from '../measures/length.dto.ts';

/** How far it pulls, as (pulled − at rest)/at rest. */
export class StretchDto {
  @NumberField({ min: 0, max: 3, description: 'In the direction of the stitches.', example: 0.2 })
  across!: number;
  @NumberField({ min: 0, max: 3, description: 'In the direction of the rows.', example: 0.1 })
  along!: number;
}

/** What washing and hanging do, as (after − before)/before; negative where it shrinks. */
export class GrowthDto {
  @NumberField({ min: -0.5, max: 0.5, description: 'In the direction of the stitches.', example: 0 })
  across!: number;
  @NumberField({ min: -0.5, max: 0.5, description: 'In the direction of the rows.', example: 0.02 })
  along!: number;
}

/** A yarn and its swatch, as far as the maker knows them. */
export class FabricDto implements WholeChecked {
  @TextField({ optional: true, max: 120, description: 'What the maker calls it.', example: 'Grey wool, hook 6' })
  title?: string | null;
  @ChoiceField(CRAFTS)
  craft!: Craft;
  @ChoiceField(STITCHES, {
    optional: true,
    description: 'Default: stockinette when knitted, single crochet when crocheted.',
  })
  stitch?: Stitch | null;
  @ObjectField(() => ThicknessDto, {
    optional: true,
    description: 'Of one layer: four layers under a small book, divided by four.',
  })
  thickness?: ThicknessDto | null;
  @NumberField({ optional: true, min: 0.5, max: 100 })
  wrapsPerInch?: number | null;
  @NumberField({ optional: true, min: 5, max: 20_000 })
  metresPer100g?: number | null;
  @ChoiceField(FIBRES, { optional: true })
  fibre?: Fibre | null;
  @WholeNumberField({ optional: true, min: 0, max: 7, description: '0 (lace) to 7 (jumbo).' })
  weightCategory?: number | null;
  @ObjectField(() => StretchDto, { optional: true })
  stretch?: StretchDto | null;
  @NumberField({ optional: true, min: 0, max: 3, description: 'Of the rib across, as measured.' })
  ribStretch?: number | null;
  @ObjectField(() => GrowthDto, { optional: true })
  growth?: GrowthDto | null;
  @NumberField({ optional: true, min: 10, max: 5000, description: 'g/m².' })
  gramsPerSquareMetre?: number | null;

  /** That its thickness is known somehow, and that what is said goes together. */
  problems() {
    return problemsFrom(() => resolveFabric(fabricInput(this)));
  }
}
