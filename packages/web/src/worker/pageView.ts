/** What the page shows of a plan: words ready, numbers for the drawings. Made in the worker. */
export interface PageView {
  readonly title: string;
}
