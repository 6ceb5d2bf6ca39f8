/** What the sum uses as long as nobody gives a figure, in SI. */
export interface Assumed {
  readonly value: number;
  readonly halfWidth: number;
  readonly why: string;
}
