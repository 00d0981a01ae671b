import { Global, Module, type DynamicModule } from '@nestjs/common';
import { SecretBox } from '../hand-off/signing/secret-box.ts';

/** What handlers need to know a request again; the key seals what is remembered of it. */
@Global()
@Module({})
export class IdempotencyModule {
  static with(key: Buffer): DynamicModule {
    const box = { provide: SecretBox, useValue: new SecretBox(key) };
    return { module: IdempotencyModule, providers: [box], exports: [box] };
  }
}
