import { ASSEMBLED_NAMES, PIECE_DIMENSION_NAMES, PIECES } from '#fit';
import { checkTakes, escapeToken, parseOurName, TAKES_RECORD, type PlannerTakes } from '#hand-off';
import { ApiError, detailOf } from '../../http/api-error.ts';
import { DomainError, storedRecord } from '#measure';
import { HttpProblem, type FieldError } from '../../http/problem.ts';
import type { AddressPolicy } from '../addresses/address-policy.ts';
import { readPlannerAddress } from '../addresses/planner-address.ts';
import type { PlannerDocument } from './planner-document.ts';
import type { PlannerDto } from './planner.dto.ts';

/** A planner as it is kept, with defaults for what was left out. @throws HttpProblem 422 with every field that cannot be used */
export function readPlanner(dto: PlannerDto, addresses: AddressPolicy): PlannerDocument {
  const takes: PlannerTakes = storedRecord(TAKES_RECORD, dto.takes ?? {});
  const errors = [...addressErrors(dto.address ?? null, addresses), ...takesErrors(takes)];
  if (errors.length === 0) return { title: dto.title, address: dto.address ?? null, takes };
  throw new HttpProblem(422, 'invalid', 'This planner cannot be used; see errors.', errors);
}

function addressErrors(address: string | null, addresses: AddressPolicy): FieldError[] {
  try {
    if (address !== null) readPlannerAddress(address, addresses);
    return [];
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return [{ pointer: '/address', detail: detailOf(error) }];
  }
}

const takesErrors = (takes: PlannerTakes): FieldError[] =>
  [...checkTakes(takes), ...unheardOf(takes)].map((error) => ({
    pointer: `/takes${error.pointer}`,
    detail: detailOf(error),
  }));

/** Names that are well formed but that no sheet has: a slip of the pen, most likely. */
function unheardOf({ names, required }: PlannerTakes): ApiError[] {
  const message = (name: string) =>
    `No sheet has “${name}”; /v1/schemas/target-sheet/1 lists the pieces and the dimensions.`;
  return [
    ...Object.keys(names).map((name) => ({ name, pointer: `/names/${escapeToken(name)}` })),
    ...required.map((name, index) => ({ name, pointer: `/required/${index}` })),
  ]
    .filter(({ name }) => !isHeardOf(name))
    .map(({ name, pointer }) => new ApiError('unknown-name', message(name), pointer));
}

/** True also for what is no name at all: `checkTakes` reports that. */
function isHeardOf(name: string): boolean {
  const parsed = parseOurName(name);
  if (parsed === null || typeof parsed === 'string') return true;
  const { place, dimension } = parsed;
  const among = (list: readonly string[], word: string): boolean => list.includes(word);
  return place === 'assembled'
    ? among(ASSEMBLED_NAMES, dimension)
    : among(PIECES, place) && among(PIECE_DIMENSION_NAMES, dimension);
}
