/** A number nobody measured that observations rest on, as the ease of a sweater; its prior, mm. */
export interface HiddenNumber {
  readonly name: string;
  readonly mean: number;
  readonly sd: number;
}

/** A contribution that changes its slope at a value of the hidden number E: below·min(E, at) + above·max(0, E − at). */
export interface BentTerm {
  readonly at: number;
  readonly below: number;
  readonly above: number;
}

/**
 * Something seen that depends on the body: Σ coefficient × dimension + Σ coefficient × hidden + constant = observed. All in mm. A source has one observation of an
 * id; observations of the same id on several sources may be compared.
 */
export interface Observation {
  readonly id: string;
  /** What it was seen on; observations of one source share its hidden numbers. */
  readonly source: string;
  /** By the name of a body dimension. */
  readonly dimensions: Readonly<Record<string, number>>;
  /** By the name of a hidden number. */
  readonly hidden: Readonly<Record<string, number | BentTerm>>;
  readonly constant: number;
  readonly observed: number;
  /** Its own spread about that sum, and the standard uncertainty of the reading. */
  readonly tau: number;
  readonly u: number;
  /** The hidden number that gives way where this contradicts the body: then its prior is dropped, and the observation stays. */
  readonly anchors?: string;
  /** Its maker says that it is right: it is compared with nothing. */
  readonly confirmed?: boolean;
}

/** The logarithms of some dimensions (mm; weight: g), jointly normal: a prior, or a posterior that is to be updated. */
export interface LogGaussian {
  readonly names: readonly string[];
  readonly mean: readonly number[];
  /** Row by row. */
  readonly covariance: readonly number[];
}
