import { readFileSync } from 'node:fs';

const program = `sagwright: set-up for a loaded motorcycle, every number with its ±.

  sagwright new my-job.json           asks its way to a first job file
  sagwright check my-job.json         what is wrong, missing or assumed
  sagwright plan my-job.json          springs, collars, both ends
  sagwright plan my-job.json --units imperial
  sagwright plan my-job.json --json > plan.json
  sagwright why collar my-job.json    where a number comes from
  sagwright measured my-job.json      what was read, against the sum
  sagwright tape linkage              which lengths give the hard points
  sagwright worklist my-job.json      what hands do to fit new shocks
  sagwright open my-job.json          the same on a page, drawn and live
  sagwright keep machine my-job.json tourer.json
                                      a machine, shock or fork as a template
  sagwright put shock.json my-job.json new-job.json
                                      another shock or fork in a job
  sagwright compare a.json b.json     which fields of two machines differ

A job file holds what was read from one machine: docs/job-file.md. "-" reads it
from standard input. Each command tells more: sagwright plan --help

Exit code
  0  planned; at each end with springs to choose from, one fits
  1  planned, but at an end nothing fits, or nothing was asked
  2  the command line was not understood, or answers ran out
  3  the file cannot be read, or has problems; nothing is planned
  4  a load is refused: over a limit, or it tips the machine
`;

const plan = `sagwright plan FILE: what to fit and where to set it, for each load.

  sagwright plan my-job.json
      Overload first, then the spring and the collar for each load, where both
      ends rest, why, and what had to be assumed.
  sagwright plan my-job.json --full
      Every spring with every load: preload, sag, rates, frequencies, attitude.
  sagwright plan my-job.json --units metric
      Units: typed (as most of the job is typed: the usual), metric, imperial.
  sagwright plan my-job.json --json
      The same for a program, in SI: docs/plan-json.md.
  cat my-job.json | sagwright plan -

Exit code: 0 fits · 1 nothing fits · 2 not understood · 3 problems · 4 refused
`;

const check = `sagwright check FILE: what is wrong, missing or assumed, each with its path.

  sagwright check my-job.json
  sagwright check my-job.json --units metric --full

Exit code: 0 it can be planned · 2 not understood · 3 it cannot
`;

const why = `sagwright why FIGURE FILE: where a number of the plan comes from.

  sagwright why --list
  sagwright why collar my-job.json
      For the planned spring and the load that is ridden most.
  sagwright why sag my-job.json --load "both of us" --spring c2
      Loads and springs by name or by id.
  sagwright why wheel-rate my-job.json --end front --units imperial
  sagwright why fork-air my-job.json --at 80
      Forces of the fork, at so many % of its stroke.
  sagwright why margin my-job.json --of rear-axle
      What is left of a limit, by its id; the nearest where none is named.
  sagwright why room my-job.json --load "to work" --of box
      How much more may lie at a place.
  sagwright why axle-load my-job.json --full
      Every input, the smallest too.

Each figure comes with its ±, its equation, whose equation that is, and its
inputs: value, ±, where it was read, and its part in the figure's ±.

Exit code: 0 told · 1 not to be had · 2 not understood · 3 problems
`;

const tape = `sagwright tape KIND or FILE: which lengths give a rear's hard points.

  sagwright tape direct         a shock between swingarm and frame
  sagwright tape linkage        a shock worked by rocker and link
  sagwright tape my-job.json
      Which of them the job has, the hard points that they give, each with its ±,
      and what every length says against the others.

Exit code: 0 told · 1 no hard points in this job · 2 not understood · 3 problems
`;

const measured = `sagwright measured FILE: what was measured, held against the sum.

  sagwright measured my-job.json
      Each sag with what the sum expected, and what its own numbers show wrong;
      what does not fit the rest, and what it would be off by; the machine as
      readings have it, and where the collar then answers each load.
  sagwright measured my-job.json --full
      Every reading and every input, the smallest too.
  sagwright measured my-job.json --json
      The same for a program: docs/measured-json.md.

Readings are written under "readings" in the job: docs/job-file.md.

Exit code: 0 readings and sum agree · 1 something is off, or nothing was read ·
2 not understood · 3 problems
`;

const worklist = `sagwright worklist FILE: what hands do to fit what the job tells of, in which
order: nothing before what it waits for, the machine lifted as seldom as can be.

  sagwright worklist my-job.json
      Each eye against its bolt; then each step with its trap, its tools, why it
      stands where it does, and the torque as somebody read it from the manual.
  sagwright worklist my-job.json --done found,loosen
      These are done, beside those that the job notes as done: what is left,
      what was done too early and must be undone, what came too late.
      Steps go by the names in brackets.
  sagwright worklist my-job.json --json
      The same for a program: docs/worklist-json.md.

Exit code: 0 told · 1 a part does not fit, or nothing is being fitted ·
2 not understood, or no such step · 3 problems
`;

const newJob = `sagwright new [FILE]: asks its way to a first job file.
Eight entries: who and what rides, and what is read at the rear. What a job
cannot leave out beside them comes with a usual figure, a wide ± and its reason.

  sagwright new                 writes job.json
  sagwright new my-job.json

Write figures with comma or point, with or without a unit: 28,5 · 160 lbf/in ·
13 3/4 in · 28 ± 1 N/mm. An empty line means that there is none, where that can
be: nobody, nothing, no collar. Answers may be piped in, one a line. A
file that is there is never written over unasked.

  sagwright new my-job.json --from tourer.json
      Begun with a machine that was kept (sagwright keep); nothing is asked, and
      the job's note says what nobody has read yet. --over writes over a file.

Exit code: 0 written · 2 answers ran out, or it was not to be written over
`;

const open = `sagwright open [FILE]: the workbench in a browser.

  sagwright open                what was on the table last, or the demo job
  sagwright open my-job.json    this job; the file itself is not touched
  sagwright open --no-browser   only prints the address
  sagwright open --port 8080    at a port of your own; else at 7263

It is served to this machine only. The page keeps its jobs in the browser, by
port, and works with the network gone. Ctrl+C ends the serving.

Exit code: 0 ended · 2 not understood · 3 no page built, port taken, no such file
`;

const keep = `sagwright keep PART JOB FILE: a machine, its shock or its fork as a template.

  sagwright keep machine my-job.json tourer.json
  sagwright keep shock my-job.json shock.json --name "spare pair, blue"
  sagwright keep fork my-job.json fork.json --over
  sagwright keep machine my-job.json tourer.json --note "second series"

A template is of every machine like it. What is of this one alone is left out
and named: who rides, how it stood, what must be read on each machine. Scales
and plates are kept as told. Without --name it is called like the machine. A
file that is there is written over with --over only.

Exit code: 0 written · 2 not understood, or not to be written over · 3 problems
`;

const put = `sagwright put TEMPLATE JOB FILE: another shock or fork in a job.

  sagwright put shock.json my-job.json new-job.json
  sagwright put fork.json my-job.json my-job.json --over

What was read of the one before goes with it, and is named; so is what must be
read again with this one in it. Where it cannot be in this machine, the places
are named and nothing is written. A whole machine: sagwright new --from

Exit code: 0 written · 2 not understood, or not to be written over · 3 problems
`;

const compare = `sagwright compare A B: which fields of two machines, shocks or forks differ.

  sagwright compare my-job.json tourer.json
      Jobs and templates alike; a job is held against a template as far as a
      template goes. What differs, by how much, within or beyond both ±.
  sagwright compare a.json b.json --part shock
      machine (the usual), shock or fork.
  sagwright compare a.json b.json --full
      What is alike too.
  sagwright compare a.json b.json --json
      For a program, in SI: docs/template-file.md

Exit code: 0 nothing differs · 1 something does · 2 not understood · 3 problems
`;

const commands: ReadonlyMap<string, string> = new Map([
  ['plan', plan],
  ['check', check],
  ['why', why],
  ['tape', tape],
  ['measured', measured],
  ['worklist', worklist],
  ['new', newJob],
  ['open', open],
  ['keep', keep],
  ['put', put],
  ['compare', compare],
]);

/** The help of a command, or of the program where there is none by that name. */
export function helpFor(command: string): string {
  return commands.get(command) ?? program;
}

export function version(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}
