import { defaultU, nextMeasure, type BodyDimension, type BodyProfile, type Sensitivity } from '#body';
import { resolveFabric } from '#fabric';
import { advise, rulesWith, type DimensionName } from '#fit';
import { resolveGarment } from '#garment';
import { DomainError } from '#measure';
import type { SheetInput } from '#target-sheet';

export interface Next {
  readonly name: BodyDimension;
  /** Uncertainty of the sheet's main measures taken together, mm; null where nothing can be said yet. */
  readonly before: number | null;
  readonly after: number | null;
}

/** The measures that decide how a sweater fits. */
const TARGETS: readonly DimensionName[] = [
  'chest-width',
  'hem-width',
  'centre-back-length',
  'armhole-depth',
  'neck-width',
  'sleeve-top-width',
  'sleeve-length',
  'cuff-width',
];

/** The one measure that would help most: the chest while it is missing, else the one that makes the sheet surest. */
export function nextToTake(input: SheetInput, profile: BodyProfile | null): Next | null {
  if (input.design.basis === 'garment' && input.garment !== null) return null;
  if (profile === null || profile.values['chest-girth']?.how === 'estimated' || !profile.values['chest-girth'])
    return { name: 'chest-girth', before: null, after: null };
  const { covariance } = profile;
  if (covariance === null) return null;
  const tapeU = Object.fromEntries(
    covariance.names.filter((name) => isGuessed(profile, name)).map((name) => [name, defaultU(name, 'home').u]),
  );
  const sensitivities = sensitivitiesOf(input, profile);
  return sensitivities === null ? null : nextMeasure({ covariance, sensitivities, tapeU });
}

const isGuessed = (profile: BodyProfile, name: BodyDimension): boolean => {
  const how = profile.values[name]?.how;
  return how === 'estimated' || how === 'table';
};

/** Of each target, how it moves with each body dimension. */
function sensitivitiesOf(input: SheetInput, body: BodyProfile): readonly Sensitivity[] | null {
  try {
    const { sensitivity } = advise({
      body,
      garment: input.garment && resolveGarment(input.garment),
      fabric: resolveFabric(input.fabric),
      design: input.design,
      made: input.made,
      rules: rulesWith(input.rules),
    });
    return TARGETS.map((target) =>
      Object.fromEntries(Object.entries(sensitivity).map(([name, slopes]) => [name, slopes[target] ?? 0])),
    );
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}
