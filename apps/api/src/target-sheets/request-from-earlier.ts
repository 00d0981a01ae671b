type Json = Readonly<Record<string, unknown>>;
const isObject = (json: unknown): json is Json => typeof json === 'object' && json !== null && !Array.isArray(json);

/**
 * What a kept sheet was made from, as parsed JSON in the shape of now, where it was kept when a sheet took one garment and its design said how far the new one's ease
 * differs. Anything else comes back as it is.
 */
export function requestFromEarlier(json: unknown): unknown {
  if (!isObject(json)) return json;
  const { garment = null, design, ...rest } = json;
  const garments = 'garments' in json ? json['garments'] : isObject(garment) ? [{ ...garment, basis: true }] : [];
  return {
    ...rest,
    garments,
    ...(design !== undefined && { design: isObject(design) ? designFromEarlier(design, garment) : design }),
  };
}

/** The ease of a garment with a chest width was its basis's, whatever else was chosen. */
function designFromEarlier(design: Json, garment: unknown): Json {
  if (!('easeChange' in design)) return design;
  const { easeChange: change, ...rest } = design;
  const asGarment = (rest['basis'] === 'garment' || rest['basis'] === 'both') && hasChestWidth(garment);
  return asGarment ? { ...rest, ease: { as: 'garment', change } } : rest;
}

const hasChestWidth = (garment: unknown): boolean =>
  isObject(garment) &&
  Array.isArray(garment['measures']) &&
  garment['measures'].some((measure) => isObject(measure) && measure['name'] === 'chest-width');
