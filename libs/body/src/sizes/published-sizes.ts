import type { LengthUnit, Note } from '#measure';
import type { BodyDimension } from '../body-dimension.ts';
import type { Figure } from '../body.ts';
import type { Mark } from './mark.ts';

/** A printed value or range. `mid` is the one to compute with: the published centre of a class, else the midpoint. `low ≤ mid ≤ high`. */
export interface SizeRange {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** One size of a table. Every value is there twice: as published, in the table's unit, and in millimetres. */
export interface SizeRow {
  /** Id of the table it is a row of. */
  readonly table: string;
  readonly size: string;
  /** "Craft Yarn Council, woman M" */
  readonly label: string;
  /** The age the size is for, where the table says one. */
  readonly ageYears: number | null;
  readonly published: Readonly<Partial<Record<BodyDimension, SizeRange>>>;
  readonly mm: Readonly<Partial<Record<BodyDimension, SizeRange>>>;
}

/** A line of a printed table: our name for it, the words it is printed under, and how sure its values are. */
export interface SizeMeasure {
  readonly name: BodyDimension;
  readonly words: string;
  readonly mark: Mark;
}

/** A published table of body sizes, smallest first. */
export interface PublishedSizes {
  readonly id: string;
  /** Short: "Craft Yarn Council, woman". */
  readonly label: string;
  readonly title: string;
  readonly publisher: string;
  readonly figure: Exclude<Figure, 'unsaid'>;
  /** The unit it is published in. */
  readonly unit: LengthUnit;
  readonly measures: readonly SizeMeasure[];
  readonly rows: readonly SizeRow[];
  /** Its traps, and what is doubtful in it. */
  readonly notes: readonly Note[];
}
