import { gasAt } from '@sagwright/model/dampers/gas';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import type { GasDocument } from '../shock/document.ts';
import type { Desk } from './desk.ts';
import { ownFigure } from './ownFigure.ts';
import { rearStroke, shockGas } from './struts.ts';

/**
 * How hard the gas of each damper pushes its shaft out, F = A_rod (P − P_atm), fully out and at full stroke; null where there is
 * none. A twin-tube that holds none, or an emulsion, pushes with nothing or little: what it is taken to hold is among what is assumed.
 */
export function shockGasFigures(desk: Desk): GasDocument | null {
  const at = (share: number) =>
    ownFigure(desk, (beside) => {
      const { shock } = beside.job.machine.rear;
      const stroke = rearStroke(beside);
      const gas = shockGas(beside, shock, stroke);
      if (gas === null) return null;
      const out = { force: 0, rate: 0 };
      gasAt(gas, share * stroke, ATMOSPHERE, out);
      return out.force;
    });
  const [fullyOut, fullStroke] = [at(0), at(1)];
  return fullyOut === null || fullStroke === null ? null : { fullyOut, fullStroke };
}
