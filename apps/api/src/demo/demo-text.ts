import type { INestApplication } from '@nestjs/common';
import { toText } from '#target-sheet';
import { demoRequests } from '../../../../seeds/demo.ts';
import { InputPipe } from '../http/input.pipe.ts';
import { THE_MAKER } from '../maker/maker-id.ts';
import { Everything } from '../everything/everything.ts';
import { SheetComposer } from '../target-sheets/sheet-composer.ts';
import { ComputeSheetDto } from '../target-sheets/sheet-request.dto.ts';
import { sheetRequest } from '../target-sheets/sheet-request.ts';

/** The first sheet of the demo scenario as text, computed and not stored; null once the maker has kept something of her own. */
export async function demoText(app: INestApplication): Promise<string | null> {
  const [request] = demoRequests;
  if (request === undefined || !(await app.get(Everything).isNothing(THE_MAKER))) return null;
  const dto = InputPipe.of(ComputeSheetDto).transform(request, { type: 'body' }) as ComputeSheetDto;
  return toText(app.get(SheetComposer).compose(sheetRequest(dto)));
}
