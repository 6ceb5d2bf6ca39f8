import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { placeOf } from '../why/place.ts';
import { words } from '../words/catalogue.ts';
import { limitList } from '../words/english/limitList.ts';
import { limitWhy, marginTitle, roomWhy, limitWhyWords as say } from '../words/english/limitWhy.ts';
import { loadName, placeName } from '../words/names.ts';
import { type WhyWords, whyInputWords } from '../words/why.ts';
import type { LimitRowDocument } from './document.ts';
import { limitRows } from './list.ts';
import { roomsOpened } from './room.ts';
import type { LimitRow } from './row.ts';
import { exactWords, limitRowName, limitRowWords, roomWords } from './words.ts';

/** Figures that open up here and nowhere else, by their readable name, with what they are. */
export const limitFigures = { margin: marginTitle, room: roomWhy.title } as const;

export type LimitFigure = keyof typeof limitFigures;

export const limitFigureNames = Object.keys(limitFigures) as readonly LimitFigure[];

/** What is left of the limit with this id opened up; or a sentence: what it lacks, or that there is none such. */
export function whyLimit(planned: JobPlan, id: string, units: Units): WhyWords | string {
  const rows = limitRows(planned);
  const row = rows.find(({ told }) => told.id === id);
  return row === undefined
    ? `${say.noLimits}${words.list(rows.map(({ told }) => told.id))}.`
    : opened(planned, row, units);
}

/** The room at a place with a load; or a sentence that says why none can be told. */
export function whyRoom(planned: JobPlan, load: string, place: string, units: Units): WhyWords | string {
  const room = roomsOpened(planned, load).find(({ told }) => told.place === place);
  if (room === undefined) return say.noPlace;
  const { told, contributions } = room;
  const sentence = roomWords(planned, told, units);
  if (told.mass === null) return sentence;
  return {
    ...roomWhy,
    title: `${roomWhy.title}: ${placeName(planned.job, place)}`,
    place: say.room(loadName(planned.job, load), sentence),
    value: exactWords(told.mass, 'mass', units),
    inputs: whyInputWords(withPlaces(planned), contributions, 'mass', units),
  };
}

/** With where things would lie at places that nothing lies on yet. */
function withPlaces(planned: JobPlan): JobPlan {
  const { inputs } = planned;
  return { ...planned, inputs: { ...inputs, figures: new Map([...inputs.limits.at, ...inputs.figures]) } };
}

/** As the terminal asks: a limit by its id, a place by name or by id; the nearest limit, and the first place with room, where none is named. */
export function openLimit(
  planned: JobPlan,
  asked: { readonly figure: LimitFigure; readonly of: string | null; readonly load: string | null },
  units: Units,
): WhyWords | string {
  const { figure, of } = asked;
  if (figure === 'margin') return whyLimit(planned, of ?? nearest(limitRows(planned)), units);
  const at = placeOf(planned, { figure: 'axle-load', end: 'rear', spring: null, loadCase: asked.load });
  if (at.kind === 'nowhere') return `${words.notToBeHad[at.because](words.quoted(at.found))}.`;
  const load = at.loadCase.id;
  const { places } = planned.job.machine;
  const named = Object.entries(places).find(
    ([id, { name }]) => id === of || name.toLowerCase() === of?.toLowerCase(),
  );
  const first = roomsOpened(planned, load)[0]?.told.place;
  return whyRoom(planned, load, of === null ? (first ?? '') : (named?.[0] ?? of), units);
}

/** What fails first, then what is too close to call, then the first that passes. */
function nearest(rows: readonly LimitRow[]): string {
  const ranks = ['over', 'within its ±', 'within', 'not checked'] as const;
  const [first] = [...rows].sort((a, b) => ranks.indexOf(a.told.verdict) - ranks.indexOf(b.told.verdict));
  return first?.told.id ?? '';
}

function opened(planned: JobPlan, { told, contributions }: LimitRow, units: Units): WhyWords | string {
  const { kind, margin, dimension } = told;
  if (margin === null) return limitRowWords(planned, told, units);
  const isCount = dimension === 'count';
  return {
    ...limitWhy[kind],
    title: say.left(limitRowName(planned, told)),
    place: placeWords(planned, told, units),
    value: isCount ? limitList.clicks(String(margin.value)) : exactWords(margin, dimension, units),
    inputs: isCount ? [] : whyInputWords(planned, contributions(), dimension, units),
  };
}

/** What is held against what, with which load. */
function placeWords({ job }: JobPlan, told: LimitRowDocument, units: Units): string {
  const { loadCase, found, allowed, dimension } = told;
  const figure = (of: typeof found): string | null => {
    if (of === null) return null;
    return dimension === 'count' ? limitList.clicks(String(of.value)) : exactWords(of, dimension, units);
  };
  const [is, may] = [figure(found), figure(allowed)];
  const held = is === null ? '' : may === null ? is : say.against(is, may);
  return loadCase === null ? held : say.with(held, loadName(job, loadCase));
}
