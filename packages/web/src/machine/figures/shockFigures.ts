import type { Shock } from '@sagwright/records/schema/struts';
import { choicesOf } from '../../fields/choicesOf.ts';
import { write } from '../../job/edits.ts';
import { struts as words } from '../../words/figures.ts';
import { type Figure, type FigurePart, quantity, together } from './figure.ts';

const SHOCK = 'machine.rear.shock';
const ADJUSTER = `${SHOCK}.lengthAdjuster`;

/** How the damper is built: it tells what its gas is taken to be where nobody read it. */
export function buildFigure(build: Shock['build']): Figure {
  const path = `${SHOCK}.build`;
  return {
    kind: 'choice',
    path,
    label: words.build,
    value: build ?? NOT_SAID,
    choices: choicesOf(words.builds),
    change: (document, value) => [write(document, path.split('.'), value === NOT_SAID ? undefined : value)],
  };
}

const NOT_SAID = 'not said';

/** Air that is set by its pressure; folded where the job has none. */
export function airOfShockPart(air: unknown): FigurePart {
  return {
    title: words.airOfShock,
    figures: airFigures(),
    ...(air === undefined && { add: words.addAir }),
  };
}

/** The shock's own length: folded where it cannot be set, as far as the job knows, and no other was chosen. */
export function lengthAdjusterPart(adjuster: unknown, chosen: unknown): FigurePart {
  return {
    title: words.lengthAdjuster,
    figures: lengthAdjusterFigures(),
    ...(adjuster === undefined && chosen === undefined && { add: words.addLengthAdjuster }),
  };
}

/** How far the shock's own length can be set, and what tells it. */
function lengthAdjusterFigures(): readonly Figure[] {
  const say = words.lengthFigures;
  const thread = together(
    `${ADJUSTER}.thread`,
    ['diameter', 'engaged'],
    [
      ['diameter', say.diameter, 'threadDiameter', 'threadDiameter'],
      ['engaged', say.engaged, 'threadEngaged', 'threadEngaged'],
    ],
  );
  return [
    ...together(
      ADJUSTER,
      ['change'],
      [
        ['change', say.change, 'lengthChange', 'collar'],
        ['least', say.least, 'lengthChange', 'collar'],
        ['most', say.most, 'lengthChange', 'collar'],
        ['lead', say.lead, 'lead', 'lead'],
      ],
    ),
    ...thread,
    {
      kind: 'number',
      path: `${ADJUSTER}.thread.atLeast`,
      label: say.atLeast,
      unit: say.diameters,
      least: 0.5,
      most: 5,
      whole: false,
    },
    ...together(`${ADJUSTER}.mark`, ['left'], [['left', say.mark, 'markLeft', 'collar']]),
    quantity('choice.shockLength', say.chosen, 'lengthChange', 'collar'),
  ];
}

/** The air of an air-assisted shock. */
function airFigures(): readonly Figure[] {
  const say = words.airFigures;
  return together(
    `${SHOCK}.air`,
    ['diameter', 'volume', 'pressure', 'least', 'most'],
    [
      ['diameter', say.diameter, 'airDiameter', 'tube'],
      ['volume', say.volume, 'gasVolume', 'airVolume'],
      ['pressure', say.pressure, 'gasPressure', 'airPressure'],
      ['readAt', say.readAt, 'wheelTravel', 'tape'],
      ['least', say.least, 'gasPressure', 'airPressure'],
      ['most', say.most, 'gasPressure', 'airPressure'],
      ['gauge', say.gauge, 'gaugeVolume', 'gasVolume'],
    ],
  );
}
