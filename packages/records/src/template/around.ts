import type { Quantity } from '../schema/quantity.ts';
import type { EndSetting, Side } from '../schema/setups.ts';
import type { FittedAt, Template } from '../schema/template.ts';
import { type JobDocument, jobFormat, jobVersion } from '../schema.ts';

/** What each end's springs are taken to be pressed by, where nobody has read it. */
export interface PreloadOf {
  readonly rear: Quantity<'length'>;
  readonly front: Quantity<'length'>;
}

/**
 * A job around a template. A machine makes a whole one. A shock or a fork needs a machine to stand in: an invented one, in which
 * any shock and any fork can stand, and whose own figures mean nothing.
 */
export function jobAround(template: Template, preload: PreloadOf): JobDocument {
  const { name } = template;
  const asFound = (fitted: FittedAt, end: 'rear' | 'front'): EndSetting =>
    settingOf(fitted, (spring) => sideOf(template.springs, spring, preload[end]));
  const job = {
    format: jobFormat,
    version: jobVersion,
    name,
    springs: template.springs,
    things: {},
    loadCases: {},
    targetSets: {},
  } as const;
  switch (template.kind) {
    case 'machine': {
      const { rear, front } = template.fitted;
      const setup = { rear: asFound(rear, 'rear'), ...(front && { front: asFound(front, 'front') }) };
      return { ...job, machine: { name, ...template.machine }, setups: { asFound: setup } };
    }
    case 'shock': {
      const machine = { ...stand, name, rear: { ...stand.rear, ...template.machine.rear } };
      const { shock } = machine.rear;
      const fitted = template.fitted.rear ?? (shock.count === 2 ? { both: STAND_IN } : { single: STAND_IN });
      return {
        ...job,
        springs: template.fitted.rear ? job.springs : { ...job.springs, [STAND_IN]: standIn },
        machine,
        setups: { asFound: { rear: asFound(fitted, 'rear') } },
        ...(template.fitting && { fitting: template.fitting }),
      };
    }
    case 'fork': {
      const { front } = template.fitted;
      const rear = { single: { spring: STAND_IN, at: { preload: preload.rear } } };
      return {
        ...job,
        springs: { ...job.springs, [STAND_IN]: standIn },
        machine: { ...stand, name, front: template.machine.front },
        setups: { asFound: { rear, ...(front && { front: asFound(front, 'front') }) } },
      };
    }
  }
}

/** A setting of the same struts, with what `of` says of each spring. */
export function settingOf(fitted: FittedAt, of: (spring: string) => Side): EndSetting {
  if ('single' in fitted) return { single: of(fitted.single) };
  if ('both' in fitted) return { both: of(fitted.both) };
  return { left: of(fitted.left), right: of(fitted.right) };
}

/** Which springs a setting has in its struts. */
export function fittedIn(setting: EndSetting): FittedAt {
  if ('single' in setting) return { single: setting.single.spring };
  if ('both' in setting) return { both: setting.both.spring };
  return { left: setting.left.spring, right: setting.right.spring };
}

/** Without a coil there is nothing to press: the air bears the load alone. */
export function sideOf(springs: JobDocument['springs'], spring: string, preload: Quantity<'length'>): Side {
  const isCoil = springs[spring]?.rate.kind !== 'none';
  return { spring, at: { preload: isCoil ? preload : { value: 0, unit: 'mm' } } };
}

const STAND_IN = 'none-kept';

const standIn = {
  name: 'none kept',
  order: 0,
  end: 'rear',
  rate: { kind: 'linear', rate: { value: 60, unit: 'N/mm' } },
} as const;

/** One to one, so that no stroke that a shock may have is more travel than a wheel may have. */
const stand = {
  name: '',
  kind: 'solo',
  weighing: {
    front: { value: 180, unit: 'kg' },
    rear: { value: 200, unit: 'kg' },
    attitude: 'own sag',
  },
  rear: {
    travel: { kind: 'leverage', ratio: { value: 1, unit: 'wheel/shock' } },
    shock: { count: 1, adjuster: { kind: 'none' } },
  },
  front: {},
  places: {},
} as const satisfies JobDocument['machine'];
