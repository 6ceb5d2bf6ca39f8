import { struts as words } from '../../words/figures.ts';
import { type Figure, quantity, together } from './figure.ts';

const SHOCK = 'machine.rear.shock';
const ADJUSTER = `${SHOCK}.lengthAdjuster`;

/** How far the shock's own length can be set, and what tells it. */
export function lengthAdjusterFigures(): readonly Figure[] {
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
export function airFigures(): readonly Figure[] {
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
