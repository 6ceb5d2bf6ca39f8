import { type Problem, problem } from '@sagwright/records/problem';
import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import type { Machine } from '@sagwright/records/schema/machine';
import type { EndSetting } from '@sagwright/records/schema/setups';
import type { FittedAt, TemplateOf } from '@sagwright/records/schema/template';
import { fittedIn, settingOf, sideOf } from '@sagwright/records/template/around';
import { keepTemplate } from '@sagwright/records/template/keep';
import { withUnit } from '@sagwright/records/template/unit';
import { writeTemplate } from '@sagwright/records/writeTemplate';
import { usualPreload } from './preload.ts';
import { dropped, readAgain } from './putSays.ts';
import { withSprings } from './springs.ts';

export type PartTemplate = TemplateOf<'shock' | 'fork'>;

/** A job with another shock or fork in it, or what keeps the two apart. */
export type Put =
  | {
      readonly ok: true;
      readonly job: JobDocument;
      /** It was in there already, and nothing was changed. */
      readonly same: boolean;
      /** Figures of the job that belonged to what was in it before. */
      readonly dropped: readonly string[];
      /** Figures that are not of this machine with this part in it, until somebody reads them. */
      readonly readAgain: readonly string[];
      /** How many shocks the machine has, where the template was kept from one with another number. */
      readonly count: 1 | 2 | null;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Puts a shock or a fork into a job, with the springs that came in it. What was read of the one before belonged to that one and
 * goes; as found its springs are taken to be pressed by a usual figure. The machine around it stays as it is.
 */
export function put(template: PartTemplate, job: JobDocument): Put {
  if (isThere(template, job)) {
    return { ok: true, job, same: true, dropped: [], readAgain: [], count: null };
  }
  if (template.kind === 'fork' && job.machine.front.travel !== undefined) {
    return { ok: false, problems: [problem(['machine', 'front', 'travel'], 'noForkHere')] };
  }
  const read = parseJob(withPart(template, job));
  if (!read.ok) return { ok: false, problems: read.problems };
  return {
    ok: true,
    job: read.job,
    same: false,
    dropped: dropped(template.kind, job),
    readAgain: readAgain(template.kind, job, read.job),
    count: otherCount(template, job),
  };
}

/** Whether the very same part stands in the job: then what was read of it holds. */
function isThere(template: PartTemplate, job: JobDocument): boolean {
  const kept = keepTemplate(job, template.kind, template.name);
  if (!kept.ok) return false;
  const { note: _, ...bare } = template;
  return writeTemplate(kept.template) === writeTemplate(bare);
}

function otherCount({ machine, kind }: PartTemplate, job: JobDocument): 1 | 2 | null {
  const { count } = job.machine.rear.shock;
  return kind === 'shock' && machine.rear.shock.count !== count ? count : null;
}

function withPart(template: PartTemplate, job: JobDocument): JobDocument {
  const end = template.kind === 'shock' ? 'rear' : 'front';
  const { springs, ids } = withSprings(job.springs, template.springs);
  const there = job.setups.asFound[end];
  const own = template.kind === 'shock' ? template.fitted.rear : template.fitted.front;
  const fitted = own === undefined ? there && fittedIn(there) : mapped(own, (id) => ids.get(id) ?? id);
  const unread = fitted && settingOf(asManyAs(there, fitted), (id) => sideOf(springs, id, usualPreload[end]));
  const { fitting, ...rest } = job;
  const rear = template.kind === 'shock' ? withUnit(fitting?.rear, template.fitting?.rear) : fitting?.rear;
  return {
    ...rest,
    ...(rear && { fitting: { rear } }),
    machine: machineWith(template, job.machine),
    springs,
    setups: { asFound: { ...job.setups.asFound, ...(unread && { [end]: unread }) } },
    ...(job.choice && { choice: choiceWithout(job.choice, end) }),
  };
}

function machineWith(template: PartTemplate, machine: Machine): Machine {
  const { rear, front } = machine;
  if (template.kind === 'shock') {
    const shock = { ...template.machine.rear.shock, count: rear.shock.count };
    return { ...machine, rear: { ...rear, shock } };
  }
  const clampHeight = front.fork?.clampHeight;
  return {
    ...machine,
    front: { ...front, fork: { ...template.machine.front.fork, ...(clampHeight && { clampHeight }) } },
  };
}

function mapped(fitted: FittedAt, of: (id: string) => string): FittedAt {
  return Object.fromEntries(Object.entries<string>(fitted).map(([strut, id]) => [strut, of(id)])) as FittedAt;
}

/** How many shocks a machine has is the machine's, whatever the one had that the shock was kept from. */
function asManyAs(there: EndSetting | undefined, fitted: FittedAt): FittedAt {
  const first = 'left' in fitted ? fitted.left : 'both' in fitted ? fitted.both : fitted.single;
  if (there === undefined) return fitted;
  if ('single' in there) return { single: first };
  return 'single' in fitted ? { both: first } : fitted;
}

/** What a person picked for the other part is picked no longer. */
function choiceWithout(choice: NonNullable<JobDocument['choice']>, end: 'rear' | 'front') {
  if (end === 'front') {
    const { front: _, ...kept } = choice;
    return kept;
  }
  const { rear: _, shockLength: _length, ...kept } = choice;
  return kept;
}
