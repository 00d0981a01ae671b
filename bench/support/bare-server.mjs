// A bare NestJS endpoint: the same DTO and the same pipe as `POST /v1/target-sheets/compute`, answering with one sheet computed before.
import 'reflect-metadata';
import { Body, Controller, HttpCode, Module, Post } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { InputPipe } from '../../dist/apps/api/src/http/input.pipe.js';
import { ComputeSheetDto } from '../../dist/apps/api/src/target-sheets/sheet-request.dto.js';

process.once('message', async (sheet) => {
  class BareController {
    compute() {
      return sheet;
    }
  }
  const endpoint = [BareController.prototype, 'compute'];
  Body(InputPipe.of(ComputeSheetDto))(...endpoint, 0);
  for (const decorate of [Post('compute'), HttpCode(200)]) {
    decorate(...endpoint, Object.getOwnPropertyDescriptor(...endpoint));
  }
  Controller('v1/target-sheets')(BareController);
  class BareModule {}
  Module({ controllers: [BareController] })(BareModule);

  const app = await NestFactory.create(BareModule, { logger: false });
  await app.listen(0, '127.0.0.1');
  process.send(await app.getUrl());
});
