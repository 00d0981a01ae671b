import { Module } from '@nestjs/common';
import { BodiesController } from './bodies.controller.ts';
import { Bodies } from './bodies.ts';

@Module({ controllers: [BodiesController], providers: [Bodies], exports: [Bodies] })
export class BodiesModule {}
