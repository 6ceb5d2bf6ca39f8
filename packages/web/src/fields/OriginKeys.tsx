import { type Origin, origins } from '@sagwright/records/schema/quantity';
import * as words from '../words/fields.ts';
import { ChoiceKeys } from './ChoiceKeys.tsx';
import { firstOrigins } from './originChoices.ts';
import type { Sheet } from './sheet.ts';

/** Where the figure comes from. */
export function OriginKeys({ sheet: { state, entry, act } }: { readonly sheet: Sheet }) {
  return (
    <ChoiceKeys
      label={words.whereFrom}
      chosen={entry.origin ?? ''}
      keys={firstOrigins(state.rules.dimension).map(asChoice)}
      none={words.originNotSaid}
      all={origins.map(asChoice)}
      onChoose={(value) => act({ kind: 'origin', origin: origins.find((each) => each === value) })}
    />
  );
}

function asChoice(origin: Origin) {
  return { value: origin, word: origin };
}
