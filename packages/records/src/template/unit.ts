import type { Mount, RearFitting, Tool } from '../schema/fitting.ts';
import { freeId } from './freeId.ts';

/** What goes on the machine's own bolts is the machine's; all else is the shock's. */
function isOfMachine({ on }: Tool): boolean {
  return on === 'topBolt' || on === 'bottomBolt';
}

/**
 * Of a shock that is being fitted, what goes with it into any machine: its eyes and bushes, its reservoir, the tools on it. Bolts, what they
 * clamp and what stands before them are the machine's; a sleeve is of both; a torque is read by each who works by it. Undefined: nothing.
 */
export function unitOf({
  name,
  top,
  bottom,
  spring,
  reservoir,
  tools,
}: RearFitting): RearFitting | undefined {
  const [ownTop, ownBottom] = [eyeOf(top), eyeOf(bottom)];
  const ownTools = toolsWhere(tools, (tool) => !isOfMachine(tool));
  const unit = {
    ...(name !== undefined && { name }),
    ...(ownTop && { top: ownTop }),
    ...(ownBottom && { bottom: ownBottom }),
    ...(spring !== undefined && { spring }),
    ...(reservoir && { reservoir }),
    ...(ownTools && { tools: ownTools }),
  };
  return someOf(unit);
}

/** Another shock, or one of which nothing is told, against the machine's own bolts; what was done with the one before is not done. */
export function withUnit(
  there: RearFitting | undefined,
  unit: RearFitting | undefined,
): RearFitting | undefined {
  const { topBolt, bottomBolt } = there?.torques ?? {};
  const torques = someOf({ ...(topBolt && { topBolt }), ...(bottomBolt && { bottomBolt }) });
  const [top, bottom] = [eyeOn(there?.top, unit?.top), eyeOn(there?.bottom, unit?.bottom)];
  const tools = someOf(allTools(toolsWhere(there?.tools, isOfMachine), unit?.tools));
  return someOf({
    ...unit,
    ...(top && { top }),
    ...(bottom && { bottom }),
    ...(there?.mountOffset && { mountOffset: there.mountOffset }),
    ...(there?.inTheWay && { inTheWay: there.inTheWay }),
    ...(tools && { tools }),
    ...(torques && { torques }),
  });
}

function eyeOf(mount: Mount | undefined): Mount | undefined {
  const { bush, bore, eyeWidth, keep } = mount ?? {};
  return someOf({
    ...(bush !== undefined && { bush }),
    ...(bore && { bore }),
    ...(eyeWidth && { eyeWidth }),
    ...(keep && { keep }),
  });
}

function eyeOn(there: Mount | undefined, eye: Mount | undefined): Mount | undefined {
  const { bolt, clampWidth } = there ?? {};
  return someOf({ ...eye, ...(bolt && { bolt }), ...(clampWidth && { clampWidth }) });
}

type Tools = NonNullable<RearFitting['tools']>;

function toolsWhere(tools: Tools | undefined, isOne: (tool: Tool) => boolean): Tools | undefined {
  return someOf(Object.fromEntries(Object.entries(tools ?? {}).filter(([, tool]) => isOne(tool))));
}

function allTools(there: Tools = {}, coming: Tools = {}): Tools {
  const tools = { ...there };
  for (const [id, tool] of Object.entries(coming))
    tools[freeId(id, (other) => tools[other] === undefined)] = tool;
  return tools;
}

function someOf<T extends object>(group: T): T | undefined {
  return Object.keys(group).length === 0 ? undefined : group;
}
