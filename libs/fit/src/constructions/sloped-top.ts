import type { GarmentModel } from '../model/garment-model.ts';
import type { Path, ValueOf } from '../model/path.ts';

/** A cap or raglan above the underarm: what is bound off, a slope, and half of the top edge. */
export function slopedTopPath(v: ValueOf, { sleeve, armhole }: GarmentModel, middle: number): Path {
  const side = middle + v(sleeve!.top) / 2;
  const underarm = v(sleeve!.underarmSeam);
  const top = v(sleeve!.length);
  return [
    [side, underarm],
    [side - v(armhole.bindOff!), underarm],
    [middle + v(sleeve!.topEdge!) / 2, top],
    [middle, top],
  ];
}
