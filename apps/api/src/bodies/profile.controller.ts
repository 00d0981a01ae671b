import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import type { BodyRecord } from '#body';
import type { FabricRecord } from '#fabric';
import type { DesignRecord } from '#fit';
import type { SheetGarmentRecord } from '#target-sheet';
import { ApiProblems, BODY_PROBLEMS } from '../http/api-problems.ts';
import { Garments } from '../garments/garments.ts';
import { DomainError } from '#measure';
import { HttpProblem } from '../http/problem.ts';
import { ProfileGarmentsQuery } from './profile-garments.query.ts';
import { Id } from '../http/id.ts';
import { MakerId } from '../maker/maker-id.ts';
import { garmentsOf } from '../target-sheets/garments.dto.ts';
import { saidRules } from '../target-sheets/sheet-request.ts';
import { BodyProfiles } from './body-profiles.ts';
import { Bodies } from './bodies.ts';
import { BodyProfileDto, ProfileRequestDto } from './profile.dto.ts';

/** What the next measure is looked for with, where nothing else is said. */
const USUAL_DESIGN: DesignRecord = {
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  length: 'regular',
  neckline: 'crew',
};
const USUAL_FABRIC: FabricRecord = { craft: 'knit', thickness: { value: 3, unit: 'mm' } };

@ApiTags('bodies')
@Controller('v1/bodies')
export class ProfileController {
  constructor(
    private readonly bodies: Bodies,
    private readonly garments: Garments,
    private readonly profiles: BodyProfiles,
  ) {}

  @Get(':id/profile')
  @ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' } })
  @ApiOperation({
    summary: 'Read what is known of a body: measured, estimated and missing; questions; the next measure',
    description:
      'Of a kept body, by itself or with kept garments that fit. The next measure is looked for with a usual pullover in mind.',
  })
  @ApiOkResponse({ description: 'All dimensions.', type: BodyProfileDto })
  @ApiProblems(400, 404)
  async read(
    @MakerId() maker: string,
    @Id() id: string,
    @Query() { garments: ids = [] }: ProfileGarmentsQuery,
  ): Promise<BodyProfileDto> {
    const { document } = await this.bodies.read(maker, id);
    const garments = await Promise.all(ids.map((each) => this.garment(maker, each)));
    return this.profileOf(document, garments, USUAL_DESIGN, USUAL_FABRIC, {});
  }

  @Post('profile')
  @HttpCode(200)
  @ApiOperation({
    summary: 'The same of a body that is sent along; nothing is stored',
    description:
      'Garments that fit count as evidence of the body, and may stand alone; with a design the next measure is looked for with that in mind.',
  })
  @ApiOkResponse({ description: 'All dimensions.', type: BodyProfileDto })
  @ApiProblems(...BODY_PROBLEMS)
  compute(@Body() { body, design, fabric, rules, ...garments }: ProfileRequestDto): BodyProfileDto {
    return this.profileOf(
      body ?? null,
      garmentsOf(garments),
      design ?? USUAL_DESIGN,
      fabric ?? USUAL_FABRIC,
      saidRules(rules ?? {}),
    );
  }

  private async garment(maker: string, id: string): Promise<SheetGarmentRecord> {
    try {
      return (await this.garments.read(maker, id)).document;
    } catch (error) {
      if (!(error instanceof DomainError) || error.code !== 'not-found') throw error;
      const wrong = { parameter: 'garments', detail: `there is no garment ${id}` };
      throw new HttpProblem(400, 'invalid-parameter', 'One parameter cannot be used; see errors.', [wrong]);
    }
  }

  private profileOf(
    body: BodyRecord | null,
    garments: readonly SheetGarmentRecord[],
    design: DesignRecord,
    fabric: FabricRecord,
    rules: Readonly<Record<string, number>>,
  ): BodyProfileDto {
    return this.profiles.of({ title: '', body, garments, fabric, design, made: [], rules, unit: 'mm' });
  }
}
