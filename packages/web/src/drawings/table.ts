/** A drawing said as a table: what "As table" shows. Every row has one cell per heading. */
export interface DrawingTable {
  readonly caption: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
