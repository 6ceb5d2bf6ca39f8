/** Every word about jobs, files and keeping. English; figures and names go in as text. */
export const files = {
  title: 'Jobs',
  close: 'Close',
  onDevice: 'Kept on this device',
  noneKept: 'Only this one.',
  here: 'on the table',
  keptAt: (when: string) => `kept ${when}`,
  open: 'Open',
  remove: 'Remove',
  removeSure: (name: string) => `Remove "${name}" from this device? It cannot be brought back.`,
  removeYes: 'Yes, remove it',
  removeNo: 'Leave it',
  begin: 'Begin',
  fromEmpty: 'New from empty',
  threeMinutes: 'New, three minutes',
  fromFile: 'Open a file …',
  drop: 'or drop a job file anywhere on the page',
  toFile: 'Copy to a file',
  examples: 'Examples',
  invented: 'All of it is invented: machines, people, places and figures.',
  newName: 'New job',
  machineName: 'a machine',
} as const;

export const broken = {
  title: (file: string) => `${file} could not be planned as it is`,
  count: (count: number) =>
    count === 1 ? '1 thing is wrong with it:' : `${count} things are wrong with it:`,
  nothingChanged: 'Nothing was changed: the job on the table is as it was.',
  rest: 'What could be read of it',
  name: 'Name',
  machine: 'Machine',
  springs: 'Springs',
  loads: 'Loads',
  none: 'none',
  mend: 'Mend it on the page',
  asItWas: 'Save it again as it was',
  close: 'Leave it',
} as const;

export const newer = {
  ready: 'A newer page is ready.',
  take: 'Take it now',
  later: 'Later',
} as const;
