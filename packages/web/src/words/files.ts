/** Every word about jobs, files and keeping. English; figures and names go in as text. */
export const files = {
  title: 'Jobs',
  threeMinutes: 'New, three minutes',
  threeMinutesSays: 'a few figures, wide ±',
  fromEmpty: 'New from empty',
  fromEmptySays: 'every figure yours',
  templates: 'Kept machines',
  templatesSays: 'and shocks, forks; compare two',
  fromFile: 'Open a file …',
  fromFileSays: 'or drop it anywhere',
  onDevice: 'Kept on this device',
  onTable: 'on the table',
  notKeptYet: 'on the table; it is kept from the first change on',
  unreadable: 'What this browser keeps cannot be read, as in a private window. Work with files instead.',
  nameless: 'a job without a name',
  keptAt: (when: string) => `kept ${when}`,
  open: 'Open',
  openOf: (name: string) => `Open ${name}`,
  toFile: 'Copy to a file',
  toFileOf: (name: string) => `Copy ${name} to a file`,
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  removeSure: 'Remove it from this device? It cannot be brought back, but from a file.',
  removeYes: 'Yes, remove it',
  removeNo: 'Leave it',
  examples: 'Examples',
  invented: 'All of it is invented: machines, people, places and figures.',
  newName: 'New job',
  machineName: 'a machine',
} as const;

/** The stories in examples/, each by its title and in a line, in the order in which they are shown. */
export const examples = [
  ['two-and-a-box', 'Two and a box', 'A heavy tourer, five loads, six pairs of springs'],
  ['least-figures', 'The least figures', 'Five readings and nothing else; the rest is assumed, and said'],
  ['light-standard', 'A light standard', 'Two-stage springs, a stepped cam, spacers in the fork'],
  ['long-legs', 'Long legs', 'One shock, its ratio taped point by point; clicks and caps'],
  [
    'known-three-ways',
    'Known three ways',
    'Hard points by tape, with a ratio and a survey from before beside them',
  ],
  ['taped-linkage', 'Taped linkage', 'One shock on rocker and link, known by its hard points; a chain'],
  ['on-tiptoe', 'On tiptoe', 'Seat, trail, lean and beam after a stiffer pair; what keeps them'],
  ['coils-that-close', 'Coils that close', 'A spring of two pitches, one on a spacer; a tested bump rubber'],
  ['nose-down', 'Nose down', 'A fork in depth: stack, air gap, top-out springs; what more oil would do'],
  [
    'pump-for-two',
    'A pump for two',
    'Air beside the coil sets the rear: pressures, and what the gauge takes',
  ],
  ['up-by-the-eye', 'Up by the eye', 'A length adjuster: turns left both ways, and what 4 mm do'],
  ['nothing-fits', 'Nothing fits', 'No spring at hand holds both loads; what would'],
  ['too-much-aboard', 'Too much aboard', 'Over the axle limit with a full tank: refused'],
  ['new-pair', 'A new pair', 'Longer shocks to be fitted: eyes, bolts, sleeves, and what hands do'],
  ['what-the-tape-says', 'What the tape says', 'Sag read at both ends, held against the sum'],
  [
    'weighed-aboard',
    'Weighed with all of it aboard',
    'A load known from two scales; a spring measured from its wire',
  ],
] as const;

export const broken = {
  title: {
    'newer version': (_file: string) => 'File from a newer version; nothing changed.',
    'no job': (file: string) => `${file} is no job file`,
    unreadable: (file: string) => `${file} could not be read`,
    problems: (file: string) => `${file} could not be planned as it is`,
  },
  nothingChanged: 'Nothing was changed: the job on the table is as it was.',
  count: (count: number) =>
    count === 1 ? 'One thing is wrong with it' : `${count} things are wrong with it`,
  rest: 'What could be read of it',
  name: 'Name',
  machine: 'Machine',
  springs: 'Springs',
  loads: 'Loads',
  none: 'none',
  mend: 'Mend it on the page',
  elsewhere: 'The page has no field for some of it: mend it in a text editor, and open it again.',
  asItWas: 'Save it again as it was',
  empty: 'The file is empty: there is nothing in it. Take another copy of it.',
  tooLarge: (megabytes: number) =>
    `The file has ${megabytes.toFixed(0)} MB; a job has 16 MB at most. This is some other file.`,
  notGiven: (why: string) => `The browser did not hand the file over: ${why}`,
  notServed:
    'The program that was to hand it over has ended. Start "sagwright open" again, or open the file here.',
} as const;

export const keeping = {
  says: {
    'no room': 'This device has no room left: what was done last is not kept.',
    refused: 'This browser keeps nothing, as in a private window. Copy the job to a file before you leave.',
    'may be cleared':
      'This browser may clear itself when room runs short. What must not be lost belongs in a file.',
    'changed elsewhere':
      'This job was changed in another window. Show it as it is there; or go on here, and it becomes a copy.',
    'went on as a copy':
      'Another window had changed this job. What was done here goes on as a copy; both are among the jobs.',
  },
  toFile: 'Copy to a file',
  again: 'Try again',
  showIt: 'Show it as it is there',
  understood: 'Understood',
  copyNamed: 'name of the copy',
  copyName: (name: string) => `${name.slice(0, 112)}, a copy`,
} as const;

export const newer = {
  ready: 'A newer page is ready.',
  elsewhere: 'A newer page was taken in another window.',
  take: 'Take it now',
  later: 'Later',
} as const;

export const brokenPage = {
  title: 'The page broke here',
  says: 'What was kept is still kept. Copy the job to a file first, then load the page again.',
  toFile: 'Copy the job to a file',
  again: 'Load the page again',
  aside: 'Load it with this job laid aside',
} as const;
