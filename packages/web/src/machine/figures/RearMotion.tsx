import type { NamedReading, PartsView, PartView, RearView } from '@sagwright/workbench/page/rearView';
import type { LoadView } from '@sagwright/workbench/page/shapes';
import { useCallback } from 'react';
import { useTable } from '../../app/useJob.ts';
import { useTold } from '../../app/useTold.ts';
import { AsTable } from '../../drawings/AsTable.tsx';
import { PartsPlot } from '../../drawings/rear/PartsPlot.tsx';
import type { PartsInput } from '../../drawings/rear/partsPlot.ts';
import { RatioPlot } from '../../drawings/rear/RatioPlot.tsx';
import type { RatioInput } from '../../drawings/rear/ratioPlot.ts';
import type { DrawingTable } from '../../drawings/table.ts';
import { rear as words } from '../../words/rear.ts';

interface RearMotionProps {
  readonly loads: readonly LoadView[];
  readonly load: LoadView;
}

/** The ratio over the travel with every load's rest on it, and the parts where the chosen load rests. */
export default function RearMotion({ loads, load: wanted }: RearMotionProps) {
  const told = useRear(wanted.id);
  // Another load's picture is named as that load's until the wanted one is there.
  const load = loads.find(({ id }) => id === told?.load);
  if (told === null || load === undefined) return null;
  const { view } = told;
  return (
    <>
      <section className="sheet-part">
        <h3>{words.title}</h3>
        <p>{words.note(view.source)}</p>
        <RatioPlot input={plotOf(view, loads, load)} spoken={spokenOf(view, loads)} />
        {view.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <AsTable table={() => ratioTable(view, loads)} of={words.title.toLowerCase()} />
        {readingTables(view).map((table) => (
          <AsTable key={table.caption} table={() => table} of={table.caption.toLowerCase()} />
        ))}
      </section>
      {view.parts !== null && <Parts parts={view.parts} lengthUnit={view.lengthUnit} name={nameOf(load)} />}
    </>
  );
}

/** The rear as it was told, and of which load. */
interface Told {
  readonly load: string | null;
  readonly view: RearView;
}

function useRear(load: string | null): Told | null {
  const { rear } = useTable();
  const ask = useCallback(async () => {
    const view = await rear(load);
    return view === null ? null : { load, view };
  }, [rear, load]);
  return useTold(ask);
}

function plotOf(view: RearView, loads: readonly LoadView[], chosen: LoadView): RatioInput {
  const { lengthUnit, ratioUnit, leverageUnit, steps, rests } = view;
  return {
    lengthUnit,
    ratioUnit,
    leverageUnit,
    steps: steps.map(({ travel, ratio, ratioDoubt }) => ({ travel, ratio, doubt: ratioDoubt })),
    rests: rests.map(({ load, travel, ratio }) => ({
      sign: loads.find(({ id }) => id === load)?.letter ?? words.alone,
      travel,
      ratio,
      chosen: load === chosen.id,
    })),
  };
}

function spokenOf(view: RearView, loads: readonly LoadView[]): readonly string[] {
  return [
    words.spokenCurve(view),
    ...view.rests.map((rest) => words.spokenRest(restName(loads, rest.load), rest, view.lengthUnit)),
  ];
}

function ratioTable(view: RearView, loads: readonly LoadView[]): DrawingTable {
  const { lengthUnit, ratioUnit, leverageUnit, steps, rests, source } = view;
  const { place, travel, ratio, leverage } = words.columns;
  const rows = [
    ...steps.map((step, i) => ({ name: words.step((100 * i) / (steps.length - 1)), at: step })),
    ...rests.map((rest) => ({ name: restName(loads, rest.load), at: rest })),
  ].toSorted((a, b) => a.at.travel - b.at.travel);
  return {
    caption: words.note(source),
    headings: [place, `${travel}, ${lengthUnit}`, `${ratio}, ${ratioUnit}`, `${leverage}, ${leverageUnit}`],
    rows: rows.map(({ name, at }) => [name, at.words.travel, at.words.ratio, at.words.leverage]),
  };
}

/** Hard points by tape, its lengths, and what was known before: those that there are. */
function readingTables({ readings, lengthUnit }: RearView): readonly DrawingTable[] {
  const { parts, lengths, survey } = readings;
  const say = words.readings;
  const of = (caption: string, name: string, rows: readonly NamedReading[]): DrawingTable => ({
    caption,
    headings: [name, ...say.columns(lengthUnit)],
    rows: rows.map((row) => [row.name, ...row.cells]),
  });
  const all: readonly DrawingTable[] = [
    {
      caption: say.parts,
      headings: [words.partColumns.part, ...say.partColumns(lengthUnit)],
      rows: parts.map(({ part, cells }) => [words.parts[part], ...cells]),
    },
    of(say.lengths, say.length, lengths),
    of(say.survey, say.wheel(lengthUnit), survey),
  ];
  return all.filter(({ rows }) => rows.length > 0);
}

interface PartsProps {
  readonly parts: PartsView;
  readonly lengthUnit: string;
  readonly name: string;
}

function Parts({ parts, lengthUnit, name }: PartsProps) {
  const stands = standsOf(parts, name);
  const input: PartsInput = { stands: stands.map(({ id, at }) => ({ id, parts: at })) };
  const numbered = stands[0]!;
  return (
    <section className="sheet-part">
      <h3>{words.partsTitle}</h3>
      <p>{words.partsNote}</p>
      {parts.rest === null && <p>{words.noRest(name)}</p>}
      <PartsPlot
        input={input}
        names={{
          stands: stands.map((stand) => stand.name),
          points: numbered.at.map(({ part }) => words.parts[part]),
        }}
        spoken={words.partsSpoken(numbered.at.length, numbered.name, stands.length)}
      />
      <AsTable table={() => partsTable(stands, lengthUnit)} of={words.partsTitle.toLowerCase()} />
    </section>
  );
}

interface NamedStand {
  readonly id: string;
  readonly name: string;
  readonly at: readonly PartView[];
}

/** The one that is numbered first: where the load rests, or fully out where it has no rest. */
function standsOf({ rest, fullyOut, fullBump }: PartsView, name: string): readonly NamedStand[] {
  const { stands } = words;
  return [
    ...(rest === null ? [] : [{ id: 'rest', name: stands.rest(name), at: rest }]),
    { id: 'fullyOut', name: stands.fullyOut, at: fullyOut },
    { id: 'fullBump', name: stands.fullBump, at: fullBump },
  ];
}

function partsTable(stands: readonly NamedStand[], unit: string): DrawingTable {
  const { part, x, height } = words.partColumns;
  return {
    caption: words.partsCaption(unit),
    headings: [part, ...stands.flatMap(({ name }) => [`${name}, ${x}`, `${name}, ${height}`])],
    rows: stands[0]!.at.map((own, i) => [
      `${i + 1} ${words.parts[own.part]}`,
      ...stands.flatMap(({ at }) => [at[i]!.words.x, at[i]!.words.height]),
    ]),
  };
}

function restName(loads: readonly LoadView[], load: string | null): string {
  const found = loads.find(({ id }) => id === load);
  return found === undefined ? words.aloneName : nameOf(found);
}

function nameOf({ letter, name }: LoadView): string {
  return letter === null ? words.aloneName : words.restName(letter, name);
}
