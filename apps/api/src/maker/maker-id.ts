import { createParamDecorator } from '@nestjs/common';

/** The one maker of this installation, made by the first migration. */
export const THE_MAKER = '01900000-0000-7000-8000-000000000001';

/** Whose request it is. Every query is bound to it; when makers sign in, this is where they are told apart. */
export const MakerId = createParamDecorator((): string => THE_MAKER);
