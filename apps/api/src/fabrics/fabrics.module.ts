import { Module } from '@nestjs/common';
import { FabricsController } from './fabrics.controller.ts';
import { Fabrics } from './fabrics.ts';

@Module({ controllers: [FabricsController], providers: [Fabrics], exports: [Fabrics] })
export class FabricsModule {}
