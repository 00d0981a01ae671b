import type { OpenAPIObject } from '@nestjs/swagger';

const header = (name: string, description: string, example: string) => ({
  name,
  in: 'header' as const,
  required: true,
  description,
  schema: { type: 'string' },
  example,
});

/** What a planner with an address is sent (Standard Webhooks 1.0.0), for those who write one. */
export const WEBHOOKS: NonNullable<OpenAPIObject['webhooks']> = {
  handOff: {
    post: {
      operationId: 'handOff',
      tags: ['hand-offs'],
      summary: 'A sheet that is handed on',
      description:
        'Posted to the planner’s address. It arrives at least once, always with the same `webhook-id`; drop what you have. What is signed is `{webhook-id}.{webhook-timestamp}.{body}`, with HMAC-SHA256.',
      parameters: [
        header('webhook-id', 'The id of the hand-off, the same for every try.', '01900000-0000-7000-8000-000000000003'),
        header('webhook-timestamp', 'Seconds since 1970, new for every try.', '1614265330'),
        header(
          'webhook-signature',
          '`v1,` and the signature in base64; two, with a space between, for a day after the secret was replaced.',
          'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
        ),
      ],
      requestBody: {
        required: true,
        description:
          'By the planner’s `format`: fields under its own names (flat), a table (csv), or a link to pull from (sheet).',
        content: {
          'application/json': {
            schema: {
              anyOf: [
                { type: 'object', description: 'The fields that the planner names, nested as its JSON Pointers say.' },
                {
                  type: 'object',
                  description: 'Where the sheet can be pulled from, with a read key.',
                  required: ['id', 'url', 'etag'],
                  properties: {
                    id: { type: 'string', format: 'uuid' },
                    url: { type: 'string', format: 'uri' },
                    etag: { type: 'string' },
                  },
                },
              ],
            },
            examples: {
              flat: { summary: 'flat', value: { back: { wide: 20 }, sleeve: { tall: 19.25 } } },
              sheet: {
                summary: 'sheet',
                value: {
                  id: '01900000-0000-7000-8000-000000000002',
                  url: 'http://127.0.0.1:4114/v1/target-sheets/01900000-0000-7000-8000-000000000002?unit=in',
                  etag: '"kS8PnH0oXn3Zl1vQm2bB3g"',
                },
              },
            },
          },
          'text/csv': { schema: { type: 'string' } },
        },
      },
      responses: {
        '2XX': { description: 'Taken. Nothing more is sent of it.' },
        '410': {
          description: 'The planner wants nothing more, ever; nothing is sent to it until the maker resumes it.',
        },
        '429': { description: 'Too fast: Retry-After is kept to. 502 and 504 slow down too.' },
        '4XX': { description: 'Not taken: tried again, more and more seldom, for a day. A redirect and 5xx likewise.' },
      },
    },
  },
};
