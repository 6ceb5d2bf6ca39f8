import type { EndView, LoadView, PictureView, StandView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { axisInInches, axisInMm } from '../drawings/ladder/axis.ts';
import type { LadderInput, LadderLane } from '../drawings/ladder/ladderInput.ts';
import type { AxleWords, Carried, SideViewInput } from '../drawings/side/sideViewInput.ts';
import { ladder, loads as loadWords, picture as words } from '../words/machine.ts';

/** How a load stands in the set-up shown; as found where nothing is planned for it. */
export function standShown(load: LoadView, shown: SetUpShown): StandView {
  return shown === 'planned' && load.planned !== null ? load.planned : load.asFound;
}

/** The side view of one load. `selected` is the thing that is looked at. */
export function sideViewInput(
  picture: PictureView,
  load: LoadView,
  shown: SetUpShown,
  selected: string | null,
): SideViewInput {
  const stand = standShown(load, shown);
  const fitted = stand === load.asFound ? picture : picture.planned;
  const [heave, pitch, rear, front] = stand.state ?? [0, 0, 0, 0];
  return {
    machine: {
      assumed: picture.assumed,
      wheelbaseMm: picture.wheelbase * 1000,
      rake: picture.rake,
      forkOffsetMm: picture.forkOffset === null ? null : picture.forkOffset * 1000,
      pivot: pointMm(picture.pivot),
      seat: pointMm(picture.seat),
      rear: {
        shocks: picture.rearShocks,
        shockLengthMm: fitted.shockLength === null ? null : fitted.shockLength * 1000,
        axleHeightMm: picture.rearRadius * 1000,
        tyreRadiusMm: fitted.rearRadius * 1000,
        referenceTravelMm: picture.rearReferenceTravel * 1000,
      },
      front: {
        isFork: picture.isFork,
        axleHeightMm: picture.frontRadius * 1000,
        tyreRadiusMm: fitted.frontRadius * 1000,
        referenceTravelMm: picture.frontReferenceTravel * 1000,
      },
    },
    stance: {
      heaveMm: heave * 1000,
      pitch,
      rearTravelMm: rear * 1000,
      frontTravelMm: front * 1000,
      shockStrokeMm: (stand.shockStroke ?? 0) * 1000,
    },
    carried: load.things.map((thing) => carried(thing, thing.aboardId === selected)),
    massCentre: pointMm(stand.centre),
    axles: axleWords(load, stand),
  };
}

function pointMm(
  point: { readonly x: number; readonly height: number } | null,
): { xMm: number; heightMm: number } | null {
  return point === null ? null : { xMm: point.x * 1000, heightMm: point.height * 1000 };
}

function carried(thing: LoadView['things'][number], selected: boolean): Carried {
  return {
    id: thing.aboardId,
    label: thing.label,
    kind: thing.kind,
    place: thing.placeKind,
    standsOn: thing.standsOn,
    mass: thing.mass,
    offset: thing.offset,
    selected,
    overLimit: thing.over,
    xMm: thing.x * 1000,
    heightMm: thing.height * 1000,
  };
}

function axleWords(load: LoadView, stand: StandView): AxleWords | null {
  const { loads } = stand;
  if (loads === null) return null;
  const of = (
    name: 'rear' | 'total' | 'front',
    limit: 'rear axle' | 'gross' | 'front axle',
  ): AxleWords['rear'] => {
    const figure = loads[name];
    const found = load.limits.find((each) => each.of === limit);
    const unknown = found === undefined || found.allowed === null;
    return {
      mass: `${figure.value} ${figure.unit}`,
      plusMinus: figure.plusMinus === null ? '' : `± ${figure.plusMinus}`,
      limit:
        found === undefined ? '' : unknown ? words.limitNeeded : words.loadOf(found.load, found.allowed!),
      verdict:
        found === undefined ? 'within' : unknown ? 'unknown' : found.verdict === 'over' ? 'over' : 'within',
    };
  };
  return {
    rear: of('rear', 'rear axle'),
    whole: of('total', 'gross'),
    front: of('front', 'front axle'),
    limitsAt: load.limits.length === 0 ? '' : words.atFullTank,
  };
}

/** The ladder of one end with every load on it. */
export function ladderInput(
  end: 'rear' | 'front',
  view: EndView,
  loads: readonly LoadView[],
  shown: SetUpShown,
  chosen: string | null,
  firstLoad: number,
  unit: string,
): LadderInput {
  return {
    end,
    title: ladder.title(end, unit),
    axis: unit === 'in' ? axisInInches : axisInMm,
    travelMaxMm: view.travelMaxMm,
    travelMaxWords: view.travelMaxWords,
    hangsAtMm: view.hangsMm,
    hangsWords: ladder.hangs(view.hangsWords),
    rubberFromMm: view.rubberMm,
    lanes: loads.map((load) => lane(end, view, load, shown)),
    chosenId: chosen ?? ALONE,
    firstLoad,
  };
}

/** Id of the machine's own lane. */
export const ALONE = 'machine alone';

function lane(end: 'rear' | 'front', view: EndView, load: LoadView, shown: SetUpShown): LadderLane {
  const stand = standShown(load, shown);
  const rest = stand[end];
  const wanted = load.id === null ? undefined : view.wanted[load.id];
  return {
    id: load.id ?? ALONE,
    letter: load.letter,
    name: load.letter === null ? loadWords.alone : loadWords.spoken(load.letter, load.name),
    rest:
      rest === null
        ? null
        : {
            fromMm: rest.fromMm,
            toMm: rest.toMm,
            plusMinusMm: rest.plusMinusMm,
            words: rest.words.value,
            plusMinusWords: rest.words.plusMinus ?? '',
          },
    measured: null,
    wanted: wanted === undefined ? null : { fromMm: wanted.fromMm, toMm: wanted.toMm, words: wanted.words },
    note: rest === null ? stand.why : rest.standing === '' ? null : rest.standing,
    ghost: null,
  };
}
