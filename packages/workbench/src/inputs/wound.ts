import { endsLength } from '@sagwright/model/springs/coil';
import type { SpringSI } from '@sagwright/model/springs/spring';
import { type WoundSectionSI, windingTable, woundLength } from '@sagwright/model/springs/winding';
import { countedCoils, meanOf, modulusOf, type Wound, wireOf } from './coil.ts';
import { type Desk, impossible, inOrder } from './desk.ts';

/** A spring of several pitches as the table of its closing sections. */
export function woundSpring(desk: Desk, path: string, wound: Wound): SpringSI {
  const wire = wireOf(desk, path, wound);
  const mean = meanOf(desk, path, wound, wire);
  if (!(mean > wire)) {
    impossible(desk, path, 'Spring wound from wire: the mean diameter must be more than the wire.');
    return { kind: 'linear', rate: 1e4 };
  }
  const shearModulus = modulusOf(desk, path, wound, wire);
  const sections = inOrder(wound.sections).map(([id, { coils, coilsPlusMinus }], i, all): WoundSectionSI => {
    const outer = Number(i === 0) + Number(i === all.length - 1);
    return {
      coils: countedCoils(desk, `${path}.sections.${id}.coils`, coils, coilsPlusMinus, outer),
      pitch: pitchOf(desk, path, wound, id),
    };
  });
  return { kind: 'table', ...windingTable({ wire, mean, shearModulus, sections }) };
}

/**
 * Free length as its pitches add up [m], ends included. The length over the coils counted is what was measured, wherever exactly they begin to
 * give: so their count's doubt is not in it.
 */
export function woundFreeLength(desk: Desk, path: string, wound: Wound): number {
  const sections = inOrder(wound.sections).map(([id, { coils }]) => ({
    coils,
    pitch: pitchOf(desk, path, wound, id),
  }));
  return woundLength(sections) + endsLength(wound.ends, wireOf(desk, path, wound));
}

function pitchOf({ take }: Desk, path: string, { sections }: Wound, id: string): number {
  const { coils, pitch, length } = sections[id]!;
  return pitch === undefined
    ? take.known(`${path}.sections.${id}.length`, length!, 'tape') / coils
    : take.known(`${path}.sections.${id}.pitch`, pitch, 'pitch');
}
