/**
 * A path as a person says it: machine.rear.shock.stroke is "Machine, rear, shock, stroke". Places in a table count
 * from 1; the `value` of a quantity is the quantity itself.
 */
export function whereInWords(path: readonly PropertyKey[]): string {
  const steps = path.at(-1) === 'value' ? path.slice(0, -1) : path;
  if (steps.length === 0) return 'The file';
  const words = steps
    .map((step) =>
      typeof step === 'number' ? `no. ${step + 1}` : isSetting(steps, step) ? SETTING : inWords(String(step)),
    )
    .join(', ');
  return words[0]!.toUpperCase() + words.slice(1);
}

const SETTING = 'where the adjuster stands';

/** The setting of a set-up is its `at`. */
function isSetting(steps: readonly PropertyKey[], step: PropertyKey): boolean {
  return step === 'at' && steps[0] === 'setups';
}

/** massCentreHeight is "mass centre height"; an id stays as it stands, since it has no capitals. */
function inWords(name: string): string {
  return name.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
}
