import type { Figure } from '@sagwright/model/plan/answer';
import { formatFigure } from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
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
    says: words.page.effect(offset, mass, onRear(rear, units), onFront(front, rear.value >= 0, units)),
  };
}

function onRear(figure: Figure, units: Units): string {
  return (figure.value < 0 ? words.page.liftsOffRear : words.page.putsOnRear)(amount(figure, units));
}

function onFront(figure: Figure, onBoth: boolean, units: Units): string {
  const text = amount(figure, units);
  return figure.value < 0 ? words.page.liftsOffFront(text) : words.page.putsOnFront(text, onBoth);
}

function amount(figure: Figure, units: Units): string {
  return formatFigure(sizeOf(figure), 'mass', units);
}
