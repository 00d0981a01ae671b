import { Module } from '@nestjs/common';
import { RulesController } from './rules.controller.ts';
import { SchemasController } from './schemas.controller.ts';
import { SizesController } from './sizes.controller.ts';

/** What the product computes with, for reading: rules, published sizes, the schema of the sheet. */
@Module({ controllers: [RulesController, SizesController, SchemasController] })
export class ReferenceModule {}
