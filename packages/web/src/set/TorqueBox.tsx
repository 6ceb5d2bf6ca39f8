import type { Fastening } from '@sagwright/records/schema/fastenings';
import type { Torque } from '@sagwright/records/schema/fitting';
import { fitting as said } from '@sagwright/workbench/words/english/fitting';
import { useStore } from '../app/useJob.ts';
import { QuantityField } from '../fields/QuantityField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { write } from '../job/edits.ts';
import { set as words } from '../words/set.ts';

interface TorqueBoxProps {
  readonly part: Fastening;
  readonly torque: Torque | undefined;
}

const texts = ['page', 'readBy', 'checkedBy'] as const;

/** A torque as read from the manual, with its page and two names. It has no other origin, whatever the keypad has chosen. */
export function TorqueBox({ part, torque = {} }: TorqueBoxProps) {
  const store = useStore();
  const path = ['fitting', 'rear', 'torques', part];
  const label = words.torque(said.parts[part]);
  const set = (name: keyof Torque, value: unknown): void =>
    store.act(label, (document) => [write(document, [...path, name], value)]);
  return (
    <details
      className="fit-torque-box"
      open={torque.value !== undefined && texts.some((name) => !torque[name])}
    >
      <summary>{words.toFigure}</summary>
      <div className="sheet-fields">
        <QuantityField
          label={`${label}, ${words.asRead}`}
          path={[...path, 'value'].join('.')}
          quantity={torque.value}
          dimension="torque"
          bound="torque"
          reading="stated"
          onCommit={(value) => set('value', value === null ? undefined : { ...value, origin: 'manual' })}
        />
        {texts.map((name) => (
          <TextField
            key={name}
            label={words[name]}
            path={[...path, name].join('.')}
            value={torque[name] ?? ''}
            most={120}
            onCommit={(text) => set(name, text === '' ? undefined : text)}
          />
        ))}
      </div>
    </details>
  );
}
