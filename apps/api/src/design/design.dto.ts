import { DESIGN_RECORD } from '#fit';
import { LayerDto } from '../garments/layer.dto.ts';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { ChosenLengthDto } from '../measures/length.dto.ts';
import { recordDto } from '../records/record-dto.ts';
import { OpeningDto } from './opening.dto.ts';
import { EaseDto } from './ease.dto.ts';

const NESTED = {
  ease: EaseDto,
  layer: LayerDto,
  customLength: ChosenLengthDto,
  band: ChosenLengthDto,
  frontBand: ChosenLengthDto,
  overlap: ChosenLengthDto,
  rib: ChosenLengthDto,
  cuffWidth: ChosenLengthDto,
  opening: OpeningDto,
  neckWidth: ChosenLengthDto,
  frontNeckDepth: ChosenLengthDto,
  backNeckDepth: ChosenLengthDto,
  seamAllowance: ChosenLengthDto,
};

/** What the maker chose. What she leaves out, the rules decide. */
export class DesignDto extends recordDto(DESIGN_RECORD, NESTED) implements CrossFieldRules {
  problems() {
    const lacks = this.length === 'custom' && this.customLength == null;
    return lacks ? [{ pointer: '/customLength', detail: 'is missing: a custom length needs it' }] : [];
  }
}
