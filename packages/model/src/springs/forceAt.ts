/** A force at one place [N], and its slope [N/m]. */
export interface RatedForce {
  force: number;
  rate: number;
}

/** The same with its energy from zero compression [J]. */
export interface ForceAt extends RatedForce {
  energy: number;
}
