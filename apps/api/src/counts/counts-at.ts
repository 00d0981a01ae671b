import { countsOf, type Counts, type CountsRequest, type Gauge, type SheetToCount } from '#counts';
import { readMeasured } from '#measure';
import { MM_PER_SHEET_UNIT, type TargetSheet } from '#target-sheet';
import type { CountsDto } from './counts-request.dto.ts';

/** A sheet in stitches and rows at what a request says. @throws DomainError of the request */
export function countsAt(sheet: TargetSheet, dto: CountsDto): Counts {
  const unit = MM_PER_SHEET_UNIT[sheet.unit];
  const toCount: SheetToCount = sheet;
  return countsOf(toCount, requestOf(dto, unit), 100 / unit);
}

function requestOf({ gauge, multiple, parity, evenRows }: CountsDto, unit: number): CountsRequest {
  const gaugeOf = ({ stitches, rows, over }: CountsDto['gauge']['main']): Gauge => ({
    stitches,
    rows,
    over: readMeasured(over, 'length').size / unit,
  });
  return {
    gauge: { main: gaugeOf(gauge.main), rib: gauge.rib ? gaugeOf(gauge.rib) : null },
    multiple: { main: multiple?.main ?? null, rib: multiple?.rib ?? null },
    parity: parity ?? null,
    evenRows: evenRows ?? false,
  };
}
