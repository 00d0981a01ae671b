export {
  CRAFTS,
  FIBRES,
  STITCHES,
  THICKNESS_SOURCES,
  type Craft,
  type Directions,
  type Fabric,
  type FabricInput,
  type Fibre,
  type Stitch,
} from './fabric.ts';
