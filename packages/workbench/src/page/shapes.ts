import type { Place } from '@sagwright/records/schema/machine';
import type { Unit } from '@sagwright/records/units';
import type { FigureName } from '../why/figures.ts';

/**
 * What a page shows of a plan: words ready in the units chosen, and plain numbers (millimetres, metres, radians as named)
 * for its drawings. Made where the plan is made, so that what travels to the page is small and needs no physics there.
 */
export interface PageView {
  /** The machine alone first, then the loads in their order. */
  readonly loads: readonly LoadView[];
  readonly picture: PictureView;
  readonly rear: EndView;
  readonly front: EndView;
  readonly targets: TargetsView;
  readonly shock: ShockView;
  /** What is said about the sum: parts not known, cautions. */
  readonly notes: readonly string[];
  readonly assumed: readonly AssumedView[];
  /** Where the mass centre of what lies at a place of each kind usually is, on this machine. */
  readonly usualPlaces: Readonly<Record<Place['kind'], UsualPlaceView>>;
  readonly lengthUnit: string;
  readonly massUnit: string;
}

/** The rear shock by itself. */
export interface ShockView {
  /** What is left of its length adjuster, both ways, and what a chosen length takes; those that open up with their figure. Empty: none is known. */
  readonly length: readonly { readonly says: string; readonly figure: FigureName | null }[];
  /** "bar", and how its air is read; null where none is set. */
  readonly air: { readonly unit: string; readonly says: readonly string[] } | null;
}

/** A number in words with its ±, and the name under which it opens up. */
export interface FigureWords {
  readonly value: string;
  readonly plusMinus: string | null;
  readonly unit: string;
}

/** One load on the machine, or the machine alone (`id` null). */
export interface LoadView {
  readonly id: string | null;
  /** A, B, C by order; null for the machine alone. */
  readonly letter: string | null;
  readonly name: string;
  readonly sharePercent: number | null;
  readonly total: FigureWords | null;
  /** Given by two scales with all of it aboard, not by things at places. */
  readonly weighed: boolean;
  readonly things: readonly ThingView[];
  readonly asFound: StandView;
  /** With both ends as planned; null for the machine alone, and while nothing is planned. */
  readonly planned: StandView | null;
  readonly limits: readonly LimitView[];
  /** A limit is exceeded: nothing is planned for this load. */
  readonly refused: boolean;
  /** What must be said of this load first: overload, tipping, rubber, metal. */
  readonly messages: readonly MessageView[];
}

export interface MessageView {
  readonly tone: 'stop' | 'look';
  readonly text: string;
}

/** A thing at a place of a load. */
export interface ThingView {
  readonly aboardId: string;
  readonly thing: string;
  readonly place: string;
  readonly label: string;
  readonly kind: 'person' | 'item' | 'fuel' | 'place';
  readonly placeKind: Place['kind'] | 'tank';
  /** The thing or place below it in this list; null where it stands on the machine. */
  readonly standsOn: string | null;
  readonly mass: string;
  /** Where it is against the rear axle: "330 behind". */
  readonly offset: string;
  /** What it does on the scales as found; null where the machine does not rest without it. */
  readonly effect: EffectView | null;
  /** Of its mass centre, reference attitude [m]. */
  readonly x: number;
  readonly height: number;
  /** Its place bears more than it may. */
  readonly over: boolean;
}

/** What a thing puts on each wheel (less than 0: takes off), and the same as a sentence. */
export interface EffectView {
  readonly rear: FigureWords;
  readonly front: FigureWords;
  readonly says: string;
}

/** How the machine stands. */
export interface StandView {
  /** [u, θ, z_r, z_f] in m and rad; null where it does not stand. */
  readonly state: readonly [number, number, number, number] | null;
  /** By which a rear shock is shorter than fully out [m]; null where it does not stand. */
  readonly shockStroke: number | null;
  readonly why: string | null;
  /** Mass centre of the whole, body coordinates [m]. */
  readonly centre: { readonly x: number; readonly height: number } | null;
  readonly rear: RestView | null;
  readonly front: RestView | null;
  readonly loads: {
    readonly rear: FigureWords;
    readonly front: FigureWords;
    readonly total: FigureWords;
  } | null;
  readonly attitude: readonly AttitudeView[];
}

/** Where a wheel rests, in millimetres of wheel travel from the stop. */
export interface RestView {
  readonly fromMm: number;
  readonly toMm: number;
  readonly restMm: number;
  readonly plusMinusMm: number;
  readonly words: FigureWords;
  readonly percent: string;
  readonly standing: string;
}

export interface AttitudeView {
  readonly name: 'pitch' | 'rake' | 'trail' | 'wheelbase' | 'seat height';
  readonly figure: FigureWords;
  /** "+21.9 ± 0.8": against the same load as found; null for the as-found state itself. */
  readonly change: string | null;
}

export interface LimitView {
  readonly load: string;
  /** A number in the unit of the page's masses. Null: not checked, figure needed. */
  readonly allowed: string | null;
  readonly verdict: 'within' | 'over' | 'within its ±' | 'not checked';
  readonly of: 'gross' | 'rear axle' | 'front axle' | 'rear tyre' | 'front tyre' | 'place';
}

/** The machine's own figures for the side view [m, rad]; null where nobody read them. */
export interface PictureView {
  /** Those of its figures that nobody read: the sum goes on with an assumption, and the picture too. */
  readonly assumed: readonly AssumedPart[];
  readonly wheelbase: number;
  readonly rake: number;
  readonly forkOffset: number | null;
  readonly pivot: { readonly x: number; readonly height: number } | null;
  readonly seat: { readonly x: number; readonly height: number } | null;
  readonly rearRadius: number;
  readonly frontRadius: number;
  readonly rearShocks: 1 | 2;
  /** Of a rear shock fully out, eye to eye, its length adjuster as it stands. */
  readonly shockLength: number | null;
  readonly rearReferenceTravel: number;
  readonly frontReferenceTravel: number;
  readonly isFork: boolean;
  /** The same parts in the set-up that is planned. */
  readonly planned: Pick<PictureView, 'rearRadius' | 'frontRadius' | 'shockLength'>;
}

/** A part of the machine that may be drawn to an assumed figure: a tyre to its radius. */
export type AssumedPart = 'wheelbase' | 'rake' | 'rear tyre' | 'front tyre';

/** One end: its travel, what each load wants of it, and its springs. */
export interface EndView {
  readonly travelMaxMm: number;
  readonly travelMaxWords: string;
  /** Of the shock or the fork. */
  readonly strokeMaxMm: number;
  readonly hangsMm: number;
  readonly hangsWords: string;
  readonly rubberMm: number | null;
  /** Wanted sag of each load by its id. */
  readonly wanted: Readonly<Record<string, WantedView>>;
  readonly adjuster: AdjusterView | null;
  readonly springs: readonly SpringView[];
  /** Spring that is planned and why; the sentence of the suggestion, or what would help where nothing fits. */
  readonly planned: string | null;
  readonly plannedBy: 'choice' | 'suggestion' | 'as found';
  readonly suggested: string | null;
  readonly headline: string;
  readonly suggestion: readonly string[];
  readonly remedies: readonly string[];
  /** "One turn on each side answers 8.6 kg on the rear wheel."; null where nothing is turned. */
  readonly perTurn: string | null;
  /** The one reading that would narrow the adjuster most, and by how much; null where nothing is aimed at. */
  readonly narrowing: { readonly says: string; readonly path: string } | null;
}

export interface WantedView {
  readonly fromMm: number;
  readonly aimMm: number;
  readonly toMm: number;
  readonly words: string;
}

/**
 * What sets an end: how far it reaches, in millimetres of an adjuster's position from the loosest end, and what is read there. A
 * pressure is drawn as such a position too, `pressurePerMm` for each millimetre.
 */
export interface AdjusterView {
  readonly sets: 'preload' | 'pressure';
  readonly mostMm: number;
  /** What it is called: "collar", "cam". */
  readonly name: string;
  /** What its figures count: "mm", "turns in", "step". */
  readonly unit: string;
  /** What is read at its loosest and at its tightest end. */
  readonly fromWords: string;
  readonly toWords: string;
  /** Positions of the steps of a cam; empty where it is no cam. */
  readonly stepsMm: readonly number[];
}

/** One spring with every load. */
export interface SpringView {
  readonly id: string;
  readonly name: string;
  readonly rate: FigureWords;
  /** As typed, where that differs from the units shown. */
  readonly typed: string | null;
  /** "109 ± 9 N/mm by its coil": a rate that was worked out; null where it was marked or tested. */
  readonly workedOut: string | null;
  /** What is told of it by itself. */
  readonly about: readonly string[];
  readonly where: string | null;
  readonly fitted: boolean;
  readonly atHand: boolean;
  readonly fits: boolean;
  readonly verdict: string;
  readonly lanes: readonly LaneView[];
  readonly for: readonly string[];
  readonly against: readonly string[];
  readonly notChecked: readonly string[];
}

/** One load on one spring, in millimetres as `AdjusterView` counts them. */
export interface LaneView {
  readonly load: string;
  readonly letter: string;
  readonly kind: 'in reach' | 'at the edge' | 'past' | 'between steps' | 'words';
  readonly fromMm: number;
  readonly toMm: number;
  readonly plusMinusMm: number;
  /** Preload or pressure of that interval, shock fully out, and its ±: "42.1 to 48.7 mm", "2.4 mm"; empty where there is no bar. */
  readonly preload: string;
  readonly plusMinus: string;
  /** Beside the bar: what is set, "past by 2.3 mm", or why there is no bar. */
  readonly words: string;
  /** Null where the load is not planned with it. */
  readonly hands: HandsView | null;
}

/** A pressure as a gauge reads it: wanted, fully out, with its ±; and where it is what is set, the same setting on the wheels. */
export interface PressureView {
  readonly wanted: string;
  readonly alone: string | null;
  readonly laden: string | null;
}

/** What hands set for one load, and what the machine does there; null what is not known or does not apply. */
export interface HandsView {
  /** In the unit of the adjuster. */
  readonly setting: string | null;
  /** Installed, shock fully out, in the page's unit of length. */
  readonly springLength: string | null;
  /** Of the air of the shock, where it has such that is set. */
  readonly pressure: PressureView | null;
  /** From as found: "1 tighter", or each side where they differ: "left: 1 tighter". Empty for a spring that is not fitted. */
  readonly turns: readonly string[];
  /** Where the wheel rests, in the page's unit of length: "29 ± 3"; and of its travel: "30 %". */
  readonly rests: string | null;
  readonly share: string | null;
  /** How quick it bounces [Hz]. */
  readonly bounces: string | null;
  readonly bouncesWithoutTyre: string | null;
}

export interface TargetsView {
  readonly id: string;
  readonly name: string;
  readonly origin: string;
  readonly shipped: boolean;
}

export interface UsualPlaceView {
  readonly x: AssumedFigure;
  readonly height: AssumedFigure;
}

/** SI, with its 90 % half-width and the unit that it is usually told in. */
export interface AssumedFigure {
  readonly value: number;
  readonly halfWidth: number;
  readonly unit: Unit;
  readonly why: string;
}

/** A figure that nobody gave, and what its doubt does to the adjusters with the planned springs. */
export interface AssumedView {
  readonly path: string;
  /** What it is, its figure with its ±, and why. */
  readonly value: string;
  readonly figure: AssumedFigure;
  readonly effect: { readonly rear: string | null; readonly front: string | null };
}
