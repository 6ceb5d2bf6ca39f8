import { type JobDocument, jobFormat, jobVersion } from '@sagwright/records/schema';
import type { Adjuster, Setting } from '@sagwright/records/schema/adjusters';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Asker } from './asker.ts';
import { askNeeded, askOptional, askWord, figuresAsked } from './questions.ts';

/** Asks what a first plan cannot do without, at most twelve questions, and makes a job of the answers. */
export async function firstJob(asker: Asker, name: string): Promise<JobDocument> {
  const front = await askNeeded(asker, figuresAsked.front);
  const rear = await askNeeded(asker, figuresAsked.rear);
  const shocks = await askWord(asker, 'Shocks at the rear', ['1', '2']);
  const ratio = await askNeeded(asker, figuresAsked.ratio);
  const rate = await askNeeded(asker, figuresAsked.rate);
  const { adjuster, at } = await askAdjuster(asker);
  const rider = await askOptional(asker, figuresAsked.rider, '"?" if not known');
  const passenger =
    rider === null ? null : await askOptional(asker, figuresAsked.passenger, '"none" without one');
  const side = { spring: 'fitted', at };
  return {
    format: jobFormat,
    version: jobVersion,
    name,
    machine: {
      name,
      kind: 'solo',
      weighing: { front, rear, attitude: 'own sag' },
      rear: { travel: { kind: 'leverage', ratio }, shock: { count: shocks === '1' ? 1 : 2, adjuster } },
      front: {},
      places: {
        rider: { name: "rider's seat", order: 1, kind: 'rider seat' },
        passenger: { name: "passenger's seat", order: 2, kind: 'passenger seat' },
      },
    },
    springs: { fitted: { name: 'as found', order: 1, end: 'rear', rate: { kind: 'linear', rate } } },
    ...loads(rider, passenger),
    targetSets: {},
    setups: { asFound: { rear: shocks === '1' ? { single: side } : { both: side } } },
  };
}

/** The collar with its two ends and where it stands; and the preload there, which a collar can do without, but not well. */
async function askAdjuster(asker: Asker): Promise<{ readonly adjuster: Adjuster; readonly at: Setting }> {
  const lead = await askOptional(asker, figuresAsked.lead, '"none" without a collar');
  if (lead === null) {
    return { adjuster: { kind: 'none' }, at: { preload: await askNeeded(asker, figuresAsked.preload) } };
  }
  const loosest = await askNeeded(asker, figuresAsked.loosest);
  const tightest = await askOther(asker, loosest);
  const reading = await askBetween(asker, loosest, tightest);
  const preload = await askOptional(asker, figuresAsked.preload, '"?" if not known');
  return {
    adjuster: {
      kind: 'collar',
      lead,
      between: 'a face of the body',
      and: 'a face of the collar',
      reading: siOf(tightest) > siOf(loosest) ? 'grows with preload' : 'shrinks with preload',
      least: loosest,
      most: tightest,
    },
    at: preload === null ? { reading } : { reading, preload },
  };
}

async function askOther(asker: Asker, loosest: Quantity<'length'>): Promise<Quantity<'length'>> {
  for (;;) {
    const tightest = await askNeeded(asker, figuresAsked.tightest);
    if (siOf(tightest) !== siOf(loosest)) return tightest;
    asker.say('  The same as at the loosest end: then there would be nothing to set.');
  }
}

async function askBetween(
  asker: Asker,
  loosest: Quantity<'length'>,
  tightest: Quantity<'length'>,
): Promise<Quantity<'length'>> {
  const ends = [siOf(loosest), siOf(tightest)];
  for (;;) {
    const now = await askNeeded(asker, figuresAsked.now);
    if (siOf(now) >= Math.min(...ends) && siOf(now) <= Math.max(...ends)) return now;
    asker.say(
      `  ${now.value} ${now.unit} lies outside its ends, ${loosest.value} ${loosest.unit} and ${tightest.value} ${tightest.unit}. Read it again.`,
    );
  }
}

/** One load for each who rides; two share the riding half and half, which is said. */
function loads(
  rider: Quantity<'mass'> | null,
  passenger: Quantity<'mass'> | null,
): Pick<JobDocument, 'things' | 'loadCases'> {
  if (rider === null) return { things: {}, loadCases: {} };
  const onRider = { thing: 'rider', place: 'rider' };
  const alone = {
    name: 'rider alone',
    order: 1,
    share: passenger === null ? 100 : 50,
    aboard: { a: onRider },
  };
  const riderThing = { name: 'rider in gear', order: 1, kind: 'person', mass: rider } as const;
  if (passenger === null) return { things: { rider: riderThing }, loadCases: { alone } };
  const both = {
    name: 'two aboard',
    order: 2,
    share: 50,
    aboard: { a: onRider, b: { thing: 'passenger', place: 'passenger' } },
  };
  const passengerThing = { name: 'passenger in gear', order: 2, kind: 'person', mass: passenger } as const;
  return { things: { rider: riderThing, passenger: passengerThing }, loadCases: { alone, both } };
}
