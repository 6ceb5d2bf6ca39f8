import type { PartName } from '@sagwright/model/rear/hardPoints';
import type { EndSetting, Side } from '@sagwright/records/schema/setups';
import { format, formatFigure, formatQuantity } from '../format/format.ts';
import { formatTurns } from '../format/turns.ts';
import type { Units } from '../format/units.ts';
import type { Note } from '../inputs/desk.ts';
import { partPaths } from '../inputs/partFields.ts';
import { awayOf } from '../inputs/tapedPlaces.ts';
import { tapeOf } from '../inputs/tapeFitted.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { words } from './catalogue.ts';
import { loadName, springName } from './names.ts';

/** What is said about the sum beside its figures, in words. */
export function noteWords(planned: JobPlan, { code, path }: Note, units: Units): string {
  const say = words.notes;
  const end: End = path.includes('front') ? 'front' : 'rear';
  switch (code) {
    case 'rubber not known':
    case 'rubber carried on':
    case 'top-out not known':
    case 'position not known':
      return say[code](end);
    case 'axle path straight':
    case 'front path straight':
    case 'travel carried on':
    case 'points beyond shock':
    case 'sideways not known':
    case 'places only looked for':
    case 'drive without pivot':
    case 'one diameter for bore and seal':
    case 'spring volume not known':
    case 'stack read relaxed':
    case 'bushes and pivot friction zero':
    case 'fuel not known':
      return say[code]();
    case 'place found elsewhere':
      return say[code](...elsewhereWords(planned, path, units));
    case 'taped point left out':
      return say[code](...tapedWords(planned, path, units));
    case 'locked as measured': {
      const { massCentre } = planned.inputs;
      return massCentre === null
        ? say[code].plain()
        : say[code].told(
            formatFigure(massCentre.height, 'length', units),
            format(1, 'mass', units),
            format(massCentre.perKilogram, 'length', units),
          );
    }
    case 'target set shipped': {
      const { name, origin } = planned.inputs.targetSet.set;
      return say[code](words.quoted(name), origin);
    }
    case 'no target':
      return say[code](loadName(planned.job, path.split('.')[1]!), end);
    case 'places not checked':
      return say[code](loadName(planned.job, path.split('.')[1]!));
    case 'riding height control': {
      const control = planned.job.machine.ridingHeightControl;
      return control === 'electronic' ? say[code].electronic() : say[code]['self-levelling']();
    }
    case 'sides differ':
      return say[code](end, foundWords(planned, end, units));
  }
}

/** "left 14.5 mm, right 15.5 mm": both sides as they were found. */
function foundWords(planned: JobPlan, end: End, units: Units): string {
  const setting: EndSetting | undefined = planned.job.setups.asFound[end];
  if (setting === undefined || !('left' in setting)) return '';
  const springs = setting.left.spring !== setting.right.spring;
  const side = (strut: 'left' | 'right'): string => {
    const at = sideWords(setting[strut], units);
    const said = springs ? words.settings.withSpring(at, springName(planned.job, setting[strut].spring)) : at;
    return words.settings.foundAt(words.settings.strut[strut], said);
  };
  return words.list([side('left'), side('right')]);
}

function sideWords({ at }: Side, units: Units): string {
  const say = words.settings.short;
  if ('reading' in at) return say.reading(formatQuantity(at.reading, units));
  if ('turns' in at) return say.turns(formatTurns(at.turns));
  if ('step' in at) return say.step(String(at.step));
  if ('click' in at) return say.click(String(at.click));
  if ('spacer' in at) return say.spacer(formatQuantity(at.spacer, units));
  return words.settings.preload(formatQuantity(at.preload, units));
}

/** The part of a place that the tape found elsewhere, and how far away. */
function elsewhereWords(
  { inputs: { places } }: JobPlan,
  path: string,
  units: Units,
): readonly [part: string, away: string] {
  const part = (Object.keys(partPaths) as PartName[]).find((each) => partPaths[each] === path)!;
  return [part, format(awayOf(places!, part), 'length', units)];
}

/** Where a taped point that was left out has its wheel, and how far its length is off the curve through the others. */
function tapedWords({ job }: JobPlan, path: string, units: Units): readonly [wheel: string, off: string] {
  const { travel } = job.machine.rear;
  if (travel.kind !== 'taped')
    throw new RangeError(`tapedWords: a rear known as ${travel.kind}; it must be taped`);
  const { ids, fit } = tapeOf(job)!;
  const id = path.split('.').at(-1)!;
  const { off } = fit.misread.find(({ point }) => ids[point] === id)!;
  return [formatQuantity(travel.points[id]!.wheel, units), format(Math.abs(off), 'length', units)];
}
