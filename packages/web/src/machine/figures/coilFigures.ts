import type { SpringRate } from '@sagwright/records/schema/springs';
import { newId } from '../../app/newId.ts';
import { choicesOf } from '../../fields/choicesOf.ts';
import { at, type Edit, write } from '../../job/edits.ts';
import { springs as words } from '../../words/figures.ts';
import { type Figure, quantity } from './figure.ts';

type Coil = Extract<SpringRate, { kind: 'coil' }>;
type Wound = Extract<SpringRate, { kind: 'wound' }>;

/** A bare coil, measured; and the rate that is marked on it, where it has one. */
export function coilFigures(path: string, { marked }: Coil): readonly Figure[] {
  return [
    ...wireFigures(path),
    counted(`${path}.coils`, words.coils, 1.5),
    counted(`${path}.coilsPlusMinus`, words.coilsPlusMinus, 0, 5),
    plain(path, 'ends', words.ends, ['closed ground', 'closed', 'plain ground', 'plain']),
    materialOf(path),
    quantity(`${path}.marked`, words.marked, 'springRate', 'springRate'),
    ...(marked === undefined ? [] : [countsOf(path)]),
  ];
}

/** A spring of several pitches: wire and coils, then section by section. */
export function woundFigures(path: string, { sections }: Wound): readonly Figure[] {
  const inOrder = sectionsIn(sections);
  return [
    ...wireFigures(path),
    plain(path, 'ends', words.ends, ['closed ground', 'closed', 'plain']),
    materialOf(path),
    choice(
      `${path}.sections.kind`,
      words.sections,
      String(inOrder.length),
      Object.fromEntries(COUNTS.map((count) => [count, String(count)])),
      (document, count) => withSections(document, [...path.split('.'), 'sections'], Number(count)),
    ),
    ...inOrder.flatMap(([id], i) => {
      const section = `${path}.sections.${id}`;
      const label = (of: string): string => words.ofSection(i + 1, of);
      return [
        counted(`${section}.coils`, label(words.sectionCoils), 0.25),
        counted(`${section}.coilsPlusMinus`, label(words.coilsPlusMinus), 0, 5),
        quantity(`${section}.pitch`, label(words.pitch), 'pitch', 'pitch'),
        quantity(`${section}.length`, label(words.sectionLength), 'springLength', 'tape'),
      ];
    }),
  ];
}

/** More nobody tells apart. */
const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8];

type Sections = Readonly<Record<string, { readonly order?: number }>>;

function sectionsIn(sections: Sections | undefined): readonly (readonly [string, { order?: number }])[] {
  return Object.entries(sections ?? {}).sort(([, a], [, b]) => (a.order ?? 0) - (b.order ?? 0));
}

/** So many sections: the last ones go, or empty ones come, to be filled in. */
function withSections(document: unknown, steps: readonly string[], count: number): readonly Edit[] {
  const now = sectionsIn(at(document, steps) as Sections | undefined);
  const last = now.at(-1)?.[1].order ?? 0;
  return [
    ...now.slice(count).map(([id]) => write(document, [...steps, id], undefined)),
    ...Array.from({ length: Math.max(0, count - now.length) }, (_, i) =>
      write(document, [...steps, newId('section')], { order: last + i + 1 }),
    ),
  ];
}

function wireFigures(path: string): readonly Figure[] {
  return [
    quantity(`${path}.wire`, words.wire, 'wire', 'wire'),
    quantity(`${path}.outside`, words.outside, 'coilDiameter', 'coilDiameter'),
    quantity(`${path}.mean`, words.mean, 'coilDiameter', 'coilDiameter'),
  ];
}

function materialOf(path: string): Figure {
  return plain(path, 'material', words.material, [
    'chrome silicon',
    'chrome vanadium',
    'silicon manganese',
    'music wire',
    'oil hardened',
    'hard drawn',
    'patented drawn',
    'hot rolled',
  ]);
}

function countsOf(path: string): Figure {
  return choice(`${path}.counts`, words.counts, '', words.countsKinds, (document, value) => [
    write(document, `${path}.counts`.split('.'), value),
  ]);
}

function counted(path: string, label: string, least: number, most = 80): Figure {
  return { kind: 'number', path, label, unit: words.coilsUnit, least, most, whole: false };
}

function plain(path: string, name: string, label: string, values: readonly string[]): Figure {
  return choice(
    `${path}.${name}`,
    label,
    '',
    Object.fromEntries(values.map((value) => [value, value])),
    (document, value) => [write(document, `${path}.${name}`.split('.'), value)],
  );
}

/** A fact with the words for each of its values; '' where what stands in the job is shown. */
export function choice(
  path: string,
  label: string,
  value: string,
  words: Readonly<Record<string, string>>,
  change: Extract<Figure, { kind: 'choice' }>['change'],
): Figure {
  return { kind: 'choice', path, label, value, choices: choicesOf(words), change };
}
