import { Module } from '@nestjs/common';
import { GarmentsController } from './garments.controller.ts';
import { Garments } from './garments.ts';

@Module({ controllers: [GarmentsController], providers: [Garments], exports: [Garments] })
export class GarmentsModule {}
