import type { AdjusterSI } from '@sagwright/model/plan/adjuster';
import type { AdjusterDoubt, SettingDoubt } from '@sagwright/model/plan/settingDoubt';
import type { Adjuster, Setting } from '@sagwright/records/schema/adjusters';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from './desk.ts';

/** An adjuster without its doubt, which `adjusterDoubt` has. Null where there is none. */
export function adjusterOf(adjuster: Adjuster | undefined): AdjusterSI | null {
  if (adjuster === undefined) return null;
  switch (adjuster.kind) {
    case 'none':
      return null;
    case 'collar': {
      const [least, most] = collarEnds(adjuster);
      const lead = siOf(adjuster.lead);
      const grows = adjuster.reading === 'grows with preload';
      return {
        kind: 'continuous',
        most: most - least,
        quantum: lead / 4,
        lead,
        readingAtZero: grows ? least : most,
        sense: grows ? 1 : -1,
      };
    }
    case 'cap': {
      const lead = siOf(adjuster.lead);
      return {
        kind: 'continuous',
        most: adjuster.turns * lead,
        quantum: lead / 4,
        lead,
        readingAtZero: 0,
        sense: 1,
      };
    }
    case 'cam':
      return { kind: 'steps', positions: adjuster.steps.map(siOf) };
    case 'clicks': {
      const alive = adjuster.count - (adjuster.dead ?? 0);
      return {
        kind: 'steps',
        positions: Array.from({ length: alive + 1 }, (_, i) => i * siOf(adjuster.perClick)),
      };
    }
    case 'spacer': {
      const least = siOf(adjuster.least);
      const quantum = siOf(adjuster.cut);
      return {
        kind: 'continuous',
        most: siOf(adjuster.most) - least,
        quantum,
        lead: null,
        readingAtZero: least,
        sense: 1,
      };
    }
  }
}

/** Where the adjuster of an end stands in the job. */
export function adjusterPath(end: 'rear' | 'front'): string {
  return end === 'rear' ? 'machine.rear.shock.adjuster' : 'machine.front.fork.adjuster';
}

/** What is uncertain about a setting that is counted; null where it is read between two faces, or cut to length: there the lead tells turns alone. */
export function adjusterDoubt(
  desk: Desk,
  end: 'rear' | 'front',
  adjuster: Adjuster | undefined,
): AdjusterDoubt | null {
  const path = adjusterPath(end);
  const doubt = (name: string): SettingDoubt => ({
    name,
    deviation: desk.take.figures.get(name)!.deviation,
  });
  switch (adjuster?.kind) {
    case 'cap': {
      const value = takeLead(desk, path, adjuster);
      return { kind: 'in proportion', value, ...doubt(`${path}.lead`) };
    }
    case 'clicks': {
      const value = takeClick(desk, path, adjuster);
      return { kind: 'in proportion', value, ...doubt(`${path}.perClick`) };
    }
    case 'cam':
      return {
        kind: 'by step',
        steps: adjuster.steps.map((_, step) => {
          takeStep(desk, path, adjuster, step);
          return doubt(`${path}.steps.${step}`);
        }),
      };
    case 'collar':
      takeLead(desk, path, adjuster);
      return null;
    default:
      return null;
  }
}

/** Advance of one turn [m]. */
function takeLead({ take }: Desk, path: string, { lead }: { readonly lead: Quantity<'length'> }): number {
  return take.known(`${path}.lead`, lead, 'lead');
}

function takeClick(
  { take }: Desk,
  path: string,
  { perClick }: Extract<Adjuster, { kind: 'clicks' }>,
): number {
  return take.known(`${path}.perClick`, perClick, 'lead');
}

/** Rise of a step above the first, which is where the others are counted from. */
function takeStep(
  { take }: Desk,
  path: string,
  { steps }: Extract<Adjuster, { kind: 'cam' }>,
  step: number,
): number {
  return take.known(`${path}.steps.${step}`, steps[step]!, step === 0 ? 'stated' : 'collar');
}

/** How far an adjuster squeezes the spring from its loosest end [m], as it was read; null where only the preload was read. */
export function positionOf(
  desk: Desk,
  end: 'rear' | 'front',
  path: string,
  adjuster: Adjuster | undefined,
  setting: Setting,
): number | null {
  const { take } = desk;
  const ofAdjuster = adjusterPath(end);
  if (adjuster === undefined) return null;
  if ('reading' in setting && adjuster.kind === 'collar') {
    return collarPosition(adjuster, take.known(`${path}.reading`, setting.reading, 'collar'));
  }
  if ('turns' in setting && adjuster.kind === 'cap')
    return setting.turns * takeLead(desk, ofAdjuster, adjuster);
  if ('step' in setting && adjuster.kind === 'cam')
    return takeStep(desk, ofAdjuster, adjuster, setting.step - 1);
  if ('click' in setting && adjuster.kind === 'clicks') {
    return Math.max(0, setting.click - (adjuster.dead ?? 0)) * takeClick(desk, ofAdjuster, adjuster);
  }
  if ('spacer' in setting && adjuster.kind === 'spacer') {
    return take.known(`${path}.spacer`, setting.spacer, 'collar') - siOf(adjuster.least);
  }
  return null;
}

/** Installed spring length [m], shock fully out, with the adjuster at its loosest end; null where nobody read one. */
export function lengthAtZero(desk: Desk, path: string, adjuster: Adjuster | undefined): number | null {
  const { take } = desk;
  if (adjuster === undefined || adjuster.kind === 'none' || adjuster.springLength === undefined) return null;
  if (adjuster.kind === 'collar') {
    const length = take.known(`${path}.springLength.length`, adjuster.springLength.length, 'springLength');
    const at = take.known(`${path}.springLength.at`, adjuster.springLength.at, 'collar');
    return length + collarPosition(adjuster, at);
  }
  if (adjuster.kind === 'spacer') {
    const length = take.known(`${path}.springLength.length`, adjuster.springLength.length, 'springLength');
    const at = take.known(`${path}.springLength.at`, adjuster.springLength.at, 'collar');
    return length + at - siOf(adjuster.least);
  }
  return take.known(`${path}.springLength`, adjuster.springLength, 'springLength');
}

/** Position at which a collar just touches the fitted spring [m]; null where nobody read it. */
export function touchPosition(desk: Desk, path: string, adjuster: Adjuster | undefined): number | null {
  if (adjuster?.kind !== 'collar' || adjuster.touches === undefined) return null;
  return collarPosition(adjuster, desk.take.known(`${path}.touches`, adjuster.touches, 'collar'));
}

type Collar = Extract<Adjuster, { kind: 'collar' }>;

function collarPosition(adjuster: Collar, reading: number): number {
  const [least, most] = collarEnds(adjuster);
  return adjuster.reading === 'grows with preload' ? reading - least : most - reading;
}

/** The ends of a collar's readings, the smaller first: they may be typed in either order. */
function collarEnds(adjuster: Collar): readonly [number, number] {
  const ends = [siOf(adjuster.least), siOf(adjuster.most)] as const;
  return [Math.min(...ends), Math.max(...ends)];
}
