import './ChoiceKeys.css';
import './key.css';
import type { ReactNode } from 'react';
import * as words from '../words/fields.ts';

export interface Choice {
  readonly value: string;
  readonly word: string;
}

interface ChoiceKeysProps {
  readonly label: string;
  readonly chosen: string;
  /** Those with a key of their own, where there is room. */
  readonly keys: readonly Choice[];
  /** Said where nothing is chosen. */
  readonly none: string;
  /** All of them, in the list. */
  readonly all: readonly Choice[];
  readonly onChoose: (value: string) => void;
  /** Stands in the place of the list. */
  readonly children?: ReactNode;
}

/** A few keys and a list of all; on a phone the list alone, showing what is chosen. */
export function ChoiceKeys({ label, chosen, keys, none, all, onChoose, children }: ChoiceKeysProps) {
  const word = all.find(({ value }) => value === chosen)?.word ?? none;
  const hasKey = keys.some(({ value }) => value === chosen);
  return (
    <fieldset className="choice-keys">
      <legend>{label}</legend>
      {keys.map(({ value, word }) => (
        <button
          key={value}
          type="button"
          className="key"
          aria-pressed={value === chosen}
          onClick={() => onChoose(value === chosen ? '' : value)}
        >
          {word}
        </button>
      ))}
      {children || (
        <span className="key choice-keys-list" data-chosen={hasKey || chosen === '' ? undefined : true}>
          <span className="choice-keys-more" aria-hidden="true">
            {hasKey || chosen === '' ? words.more : word}
          </span>
          <span className="choice-keys-word" aria-hidden="true">
            {word}
          </span>
          <select aria-label={label} value={chosen} onChange={(event) => onChoose(event.target.value)}>
            <option value="">{none}</option>
            {all.map(({ value, word }) => (
              <option key={value} value={value}>
                {word}
              </option>
            ))}
          </select>
        </span>
      )}
    </fieldset>
  );
}
