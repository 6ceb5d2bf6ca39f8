import type { Figure } from '@sagwright/model/plan/answer';
import { formatFigure } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { words } from '../words/catalogue.ts';
import type { Effect } from './effect.ts';
import type { EffectView } from './shapes.ts';
import { figureWords } from './stands.ts';

/** What a thing does on the scales, in words: "330 mm behind the rear axle: 4 kg puts 4.8 ± 0.5 kg on the rear wheel, …". */
export function effectView({ rear, front }: Effect, mass: string, offset: string, units: Units): EffectView {
  return {
    rear: figureWords(rear, 'mass', units),
    front: figureWords(front, 'mass', units),
    says: words.page.effect(offset, mass, [onWheel(rear, 'rear', units), onWheel(front, 'front', units)]),
  };
}

function onWheel(figure: Figure, end: 'rear' | 'front', units: Units): string {
  const text = formatFigure({ ...figure, value: Math.abs(figure.value) }, 'mass', units);
  return (figure.value < 0 ? words.page.liftsOff : words.page.putsOn)(text, end);
}
