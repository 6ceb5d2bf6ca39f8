import {
  formatChange,
  formatFigureNumber,
  formatNumber,
  formatValueNumber,
  unitOf,
} from '@sagwright/workbench/format/format';
import type { PlannedDocument, PlannedLoadDocument, SagDocument } from '@sagwright/workbench/result/document';
import { words } from '@sagwright/workbench/words/catalogue';
import { type Column, fitsIn, table } from '../terminal/table.ts';
import { type End, heading, inView, nameOf, type Page, plannedCell } from './page.ts';

interface Row {
  readonly load: PlannedLoadDocument;
  readonly refused: boolean;
  readonly rear: PlannedDocument | null;
}

/** Where both ends rest, set as planned; and what is left and how it rides there. */
export function sagLines(page: Page): readonly string[] {
  const { result, units, width, paint } = page;
  const rows = result.planned.map((load): Row => {
    const refused = result.loadCases.some(({ id, refused: over }) => id === load.loadCase && over);
    return { load, refused, rear: plannedCell(inView(page, 'rear'), load.loadCase) };
  });
  if (rows.length === 0) return [];
  const unit = unitOf('length', units);
  return [
    ...heading(page, 'SAG', `both ends as planned, along the wheel, ${unit}; friction: lifted to pressed`),
    ...sagTables(page, rows),
    '',
    ...heading(page, 'ROOM', 'left at the rear; nose and trail against as found, same load'),
    ...table(
      [loadColumn(page), ...roomColumns(page)],
      rows.filter(({ refused }) => !refused),
      width,
      paint,
    ),
  ];
}

/** Both ends side by side; one below the other where the terminal or the unit leaves no room for that. */
function sagTables(page: Page, rows: readonly Row[]): readonly string[] {
  const { width, paint } = page;
  const [rear, front] = [sagColumns(page, 'rear'), sagColumns(page, 'front')];
  const together = [loadColumn(page), ...rear, ...front];
  if (fitsIn(together, rows, width)) return table(together, rows, width, paint);
  return [rear, front].flatMap((columns) => table([loadColumn(page), ...columns], rows, width, paint));
}

function loadColumn(page: Page): Column<Row> {
  return { head: ['', ''], align: 'left', cell: ({ load }) => nameOf(page, load.loadCase) };
}

function sagColumns(page: Page, end: End): readonly Column<Row>[] {
  const { units, result } = page;
  const { travelMax } = result[end];
  const of = travelMax === null ? '' : `of ${formatNumber(travelMax, 'length', units)}`;
  const sag = (row: Row): SagDocument | null =>
    row.load.standing.kind === 'rest' ? row.load.standing[end] : null;
  const columns: readonly Column<Row>[] = [
    {
      head: [end, of],
      align: 'right',
      cell: (row) => {
        if (row.refused) return '-';
        const here = sag(row);
        if (here !== null) return sagWords(page, here);
        return row.load.standing.kind === 'tips' ? 'tips' : 'no rest';
      },
      look: () => 'strong',
    },
    {
      head: ['', '%'],
      align: 'right',
      cell: (row) => {
        const here = sag(row);
        return here === null || row.refused ? '' : formatNumber(here.share, 'share', units);
      },
    },
    {
      head: ['', 'friction'],
      align: 'right',
      cell: (row) => (row.refused ? '' : bandWords(page, sag(row))),
    },
  ];
  if (end === 'front') return columns;
  const free: Column<Row> = {
    head: ['', 'free'],
    align: 'right',
    cell: ({ rear }) => {
      const alone = rear?.set.free ?? null;
      return alone === null ? '' : sagWords(page, alone);
    },
  };
  return [...columns, free];
}

/** Sag with its ±, and where it stands unless that is free of all stops and rubbers. */
export function sagWords(page: Page, { sag, standing }: SagDocument): string {
  if (standing === 'topped out') return words.standings[standing];
  const figure = formatFigureNumber(sag, 'length', page.units);
  const isFree = standing === 'free' || standing === 'on top-out spring';
  return isFree ? figure : `${figure} ${words.standings[standing]}`;
}

/** Travels that friction allows, counted like the sag, in the digits of the sag's ±. */
export function bandWords(page: Page, sag: SagDocument | null): string {
  if (sag === null || sag.band === null || sag.standing === 'topped out') return '';
  const hanging = sag.travel.value - sag.sag.value;
  const edge = (travel: number): string =>
    formatValueNumber({ value: travel - hanging, plusMinus: sag.sag.plusMinus }, 'length', page.units);
  return `${edge(sag.band.least)} to ${edge(sag.band.most)}`;
}

function roomColumns(page: Page): readonly Column<Row>[] {
  const { units } = page;
  const unit = unitOf('length', units);
  const number = (value: number | null | undefined, dimension: 'length' | 'rate' | 'frequency'): string =>
    value == null ? '?' : formatNumber(value, dimension, units);
  const ofSet = (
    head: readonly [string, string],
    pick: (set: PlannedDocument['set']) => number | null,
    dimension: 'length' | 'rate' | 'frequency',
  ): Column<Row> => ({
    head,
    align: 'right',
    cell: ({ rear }) => (rear === null ? '' : number(pick(rear.set), dimension)),
    look: ({ rear }) => ((rear === null ? 1 : (pick(rear.set) ?? 1)) < 0 ? 'attention' : null),
  });
  return [
    ofSet(['rear ride', 'Hz'], (set) => set.frequency, 'frequency'),
    ofSet(['to rubber', unit], (set) => set.travelToRubber, 'length'),
    ofSet(['to metal', unit], (set) => set.travelToMetal, 'length'),
    ofSet(['to coils', unit], (set) => set.strokeToCoilBind, 'length'),
    {
      head: ['nose', unitOf('angle', units)],
      align: 'right',
      cell: ({ load, refused }) => {
        const pitch = load.attitudeChange?.pitch ?? null;
        return pitch === null || refused ? '' : noseWords(page, pitch);
      },
    },
    {
      head: ['trail', unit],
      align: 'right',
      cell: ({ load, refused }) => {
        const trail = load.attitudeChange?.groundTrail ?? null;
        if (refused) return '';
        return trail === null ? '?' : formatChange(trail, 'length', units);
      },
    },
  ];
}

/** Pitch is nose-down positive inside; a person reads "0.3 up". */
export function noseWords({ units }: Page, pitch: number): string {
  const text = formatNumber(Math.abs(pitch), 'angle', units);
  if (!/[1-9]/.test(text)) return text;
  return (pitch > 0 ? words.settings.nose.down : words.settings.nose.up)(text);
}
