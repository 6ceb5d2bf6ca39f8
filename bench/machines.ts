import { readFileSync } from 'node:fs';
import { type FirstMoments, momentsOf, type PointMass } from '@sagwright/model/masses/pointMass';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { type Fixture, machineOf } from '../checks/energy-minimised-machines/machine.ts';
import { linkage, passenger, rider, shock, sideCases, topBox, tourer, twinShocks } from './tourer.ts';

/** A machine that is solved with its loads, one after the other. */
export interface LoadedMachine {
  readonly name: string;
  readonly machine: MachineSI;
  readonly loads: readonly FirstMoments[];
}

/** The two machines of the checks whose ratio is told, and invented ones with what those have not. */
export function loadedMachines(): readonly LoadedMachine[] {
  const two = [rider, passenger, sideCases];
  const stiff = { ...shock, rubber: { start: 0.02, rate: 40000, hardening: 1e9 } };
  return [
    ofChecks('two-rate springs', 'light_standard_dual_rate'),
    ofChecks('twin shocks', 'collar_out_of_range'),
    loaded('drawn ratio curve', tourer(linkage, shock), [[], [rider], two, [...two, topBox]]),
    loaded('on the bump rubber', tourer(twinShocks, stiff), [two, [...two, topBox]]),
    loaded('on the top-out spring', tourer(twinShocks, { ...shock, preload: 0.035 }), [[]]),
    loaded('topped out', tourer(twinShocks, { ...shock, topOut: null, preload: 0.05 }), [[]]),
    loaded('bottomed', tourer(twinShocks, { ...shock, rubber: null, preload: -0.02 }), [two]),
  ];
}

/** The machine of the checks with rocker and link, worked out from its hard points. */
export function linkageMachine(): LoadedMachine {
  return ofChecks('rocker and link', 'adventure_linkage');
}

function loaded(name: string, machine: MachineSI, loads: readonly (readonly PointMass[])[]): LoadedMachine {
  return { name, machine, loads: loads.map(momentsOf) };
}

/** A machine of checks/energy-minimised-machines. Read from the folder that this runs in, the repository's root. */
function ofChecks(name: string, file: string): LoadedMachine {
  const path = `checks/energy-minimised-machines/${file}.json`;
  const fixture = JSON.parse(readFileSync(path, 'utf8')) as Fixture;
  return loaded(
    name,
    machineOf(fixture),
    fixture.case.load_cases.map((load) => load.items),
  );
}
