import { Module } from '@nestjs/common';
import { BODY_RECORD } from '#body';
import { FABRIC_RECORD } from '#fabric';
import { GARMENT_RECORD } from '#garment';
import { BodyModelModule } from '../body-model/body-model.module.ts';
import { BodyProfiles } from '../bodies/body-profiles.ts';
import { ProfileController } from '../bodies/profile.controller.ts';
import { BodyDto } from '../bodies/body.dto.ts';
import { Bodies } from '../bodies/bodies.ts';
import { BodyPage, KeptBody } from '../bodies/kept-body.dto.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import { Fabrics } from '../fabrics/fabrics.ts';
import { FabricPage, KeptFabric } from '../fabrics/kept-fabric.dto.ts';
import { GarmentDto } from '../garments/garment.dto.ts';
import { Garments } from '../garments/garments.ts';
import { GarmentPage, KeptGarment } from '../garments/kept-garment.dto.ts';
import { recordsController } from './records.controller.ts';

const BodiesController = recordsController({
  path: 'bodies',
  what: 'a body',
  dto: BodyDto,
  kept: KeptBody,
  page: BodyPage,
  records: Bodies,
  schema: BODY_RECORD,
});
const GarmentsController = recordsController({
  path: 'garments',
  what: 'a garment that fits',
  dto: GarmentDto,
  kept: KeptGarment,
  page: GarmentPage,
  records: Garments,
  schema: GARMENT_RECORD,
});
const FabricsController = recordsController({
  path: 'fabrics',
  what: 'a fabric',
  dto: FabricDto,
  kept: KeptFabric,
  page: FabricPage,
  records: Fabrics,
  schema: FABRIC_RECORD,
});

/** What a maker keeps: bodies, garments that fit, fabrics. */
@Module({
  imports: [BodyModelModule],
  controllers: [BodiesController, ProfileController, GarmentsController, FabricsController],
  providers: [Bodies, BodyProfiles, Garments, Fabrics],
  exports: [Bodies, Garments, Fabrics],
})
export class RecordsModule {}
