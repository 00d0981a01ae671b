import { text, type JsonSchema } from './json-schema.ts';

/** What a text says as data; both are absent in sheets made before texts had codes. */
export const codeAndParams = {
  code: text('What the text beside it says: stable, lower-case with hyphens.'),
  params: {
    type: 'object',
    description:
      'The values in that text, by name. A number whose name ends in Mm is a length in millimetres, whatever the sheet’s unit.',
  },
} as const satisfies Readonly<Record<string, JsonSchema>>;

export const CODE_AND_PARAMS = ['code', 'params'] as const;
