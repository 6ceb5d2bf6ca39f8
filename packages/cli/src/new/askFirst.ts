import { collarFault, type FirstEntries, firstFigures } from '@sagwright/workbench/first/entries';
import { collarFaults, firstEntries } from '@sagwright/workbench/words/english/first';
import type { Asker } from './asker.ts';
import { askNeeded, askOptional, askWord } from './questions.ts';

/** Asks the eight entries of a first plan, in their order. */
export async function askFirst(asker: Asker): Promise<FirstEntries> {
  return {
    rider: await askNeeded(asker, asked('rider')),
    passenger: await askOptional(asker, asked('passenger')),
    behind: await askOptional(asker, asked('behind')),
    rear: await askNeeded(asker, asked('rear')),
    shocks: (await askWord(asker, firstEntries.shocks.ask, ['1', '2'])) === '1' ? 1 : 2,
    rate: await askNeeded(asker, asked('rate')),
    ...(await askCollar(asker)),
  };
}

/** Both readings of the collar, again until they can be; or none of a shock without one. */
async function askCollar(asker: Asker): Promise<Pick<FirstEntries, 'collarNow' | 'collarMost'>> {
  for (;;) {
    const collarNow = await askOptional(asker, asked('collarNow'));
    if (collarNow === null) return { collarNow, collarMost: null };
    const collarMost = await askNeeded(asker, asked('collarMost'));
    const fault = collarFault(collarNow, collarMost);
    if (fault === null) return { collarNow, collarMost };
    asker.say(`  ${collarFaults[fault]}`);
  }
}

function asked<N extends keyof typeof firstFigures>(name: N) {
  return { ...firstEntries[name], figure: firstFigures[name] };
}
