import { ApiHeader } from '@nestjs/swagger';

/** Documents that an operation makes what it makes once for a key. */
export const TakesIdempotencyKey = () =>
  ApiHeader({
    name: 'Idempotency-Key',
    required: false,
    description:
      'For a day the same request with the same key makes nothing more and is answered as the first was; another request with it is refused.',
    schema: { type: 'string', maxLength: 200, example: '7f0c6f0e-5a0b-4b62-9c39-0d1a3f0c6a11' },
  });
