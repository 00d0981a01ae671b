export { GARMENT_DIMENSIONS, type GarmentDimension } from './garment-dimension.ts';
export {
  CONSTRUCTIONS,
  LAYER_SLEEVES,
  WEARS,
  type Construction,
  type Garment,
  type GarmentMeasure,
  type GarmentProfile,
  type GarmentValue,
  type Layer,
  type Wears,
} from './garment.ts';
