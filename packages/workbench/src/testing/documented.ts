/** The tables of docs/plan-json.md as shapes: what each field may hold. */
export interface Documented {
  readonly shapes: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** Names of figures by reason code; one code may have several sets. */
  readonly reasonFigures: ReadonlyMap<string, readonly (readonly string[])[]>;
}

export function documentedIn(markdown: string): Documented {
  const shapes = new Map<string, Map<string, string>>();
  const reasonFigures = new Map<string, string[][]>();
  let heading = '';
  for (const line of markdown.split('\n')) {
    if (/^#+ /.test(line)) heading = line.replace(/^#+ /, '');
    const [, first = '', second = ''] = /^\| `([^`]+)` \|([^|]*)\|/.exec(line) ?? [];
    if (first === '') continue;
    if (heading === 'Reason codes') {
      const names = [...second.matchAll(/`([^`]+)`/g)].map((match) => match[1]!);
      reasonFigures.set(first, [...(reasonFigures.get(first) ?? []), names]);
    } else {
      shapes.set(heading, (shapes.get(heading) ?? new Map()).set(first, second.trim()));
    }
  }
  return { shapes, reasonFigures };
}

/** Every way in which a value departs from its documented type, with its path. `seen` gathers the fields that were met. */
export function departures(
  documented: Documented,
  value: unknown,
  type: string,
  path: string,
  seen: Set<string>,
): readonly string[] {
  if (type.endsWith(' or null')) {
    return value === null ? [] : departures(documented, value, type.slice(0, -8), path, seen);
  }
  if (type.startsWith('list of ')) {
    if (!Array.isArray(value)) return [`${path}: no list`];
    return value.flatMap((each, i) => departures(documented, each, type.slice(8), `${path}.${i}`, seen));
  }
  const shape = /^`(.+)`$/.exec(type)?.[1];
  if (shape !== undefined) return shapeDepartures(documented, value, shape, path, seen);
  const fits = primitives[type];
  if (fits === undefined) return [`${path}: the document says "${type}", which is no type`];
  return fits(value) ? [] : [`${path}: ${JSON.stringify(value)} is no ${type}`];
}

const primitives: Readonly<Record<string, (value: unknown) => boolean>> = {
  text: (value) => typeof value === 'string' && value !== '',
  'text, may be missing': (value) => value === undefined || typeof value === 'string',
  number: (value) => typeof value === 'number' && Number.isFinite(value),
  'yes/no': (value) => typeof value === 'boolean',
  'figures of the code': (value) => typeof value === 'object' && value !== null,
  'setting as in the job file': (value) =>
    typeof value === 'object' &&
    value !== null &&
    Object.entries(value).length === 1 &&
    Object.entries(value).every(
      ([name, at]) => ['reading', 'turns', 'step', 'click', 'spacer'].includes(name) && Number.isFinite(at),
    ),
};

function shapeDepartures(
  documented: Documented,
  value: unknown,
  shape: string,
  path: string,
  seen: Set<string>,
): readonly string[] {
  if (typeof value !== 'object' || value === null) return [`${path}: no ${shape}`];
  const held = value as Record<string, unknown>;
  const name = documented.shapes.has(shape) ? shape : `${shape}: ${String(held.kind)}`;
  const fields = documented.shapes.get(name);
  if (fields === undefined) return [`${path}: no table for "${name}"`];
  const unknown = Object.keys(held).filter((key) => !fields.has(key));
  const inside = [...fields].flatMap(([field, type]) => {
    seen.add(`${name}.${field}`);
    return departures(documented, held[field], type, `${path}.${field}`, seen);
  });
  return [...unknown.map((key) => `${path}.${key}: not in the table of "${name}"`), ...inside];
}
