/** Exit codes; the same list stands in --help and in docs/terminal.md. The greatest that applies is given. */
export const exitCodes = {
  planned: 0,
  nothingFits: 1,
  usage: 2,
  problems: 3,
  refused: 4,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];
