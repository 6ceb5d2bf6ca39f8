import type { Quantity } from '@sagwright/records/schema/quantity';
import { useState } from 'react';
import { type FieldRules, type FieldState, sameQuantity } from './draft.ts';
import { type FieldAction, fieldAt, fieldState } from './fieldState.ts';
import { lastUse, rememberUse } from './lastUse.ts';

export interface QuantityFieldHook {
  readonly state: FieldState;
  readonly act: (action: FieldAction) => void;
  /** Opens the sheet with unit, ± and origin as last used; a text is what was typed onto the closed field. */
  readonly open: (text?: string) => void;
}

/** The state of one quantity field: `fieldState`, with the job on one side and the last use on the other. No DOM. */
export function useQuantityField(
  rules: FieldRules,
  quantity: Quantity | null,
  onCommit: (quantity: Quantity | null) => void,
): QuantityFieldHook {
  const kind = rules.bound ?? rules.dimension;
  const [state, setState] = useState(() => fieldAt(rules, quantity));
  const [seen, setSeen] = useState(quantity);
  if (!sameQuantity(seen, quantity)) {
    setSeen(quantity);
    if (!sameQuantity(state.committed, quantity)) setState(fieldState(state, { kind: 'arrived', quantity }));
  }

  function act(action: FieldAction): void {
    const next = fieldState(state, action);
    setState(next);
    if (sameQuantity(next.committed, state.committed)) return;
    if (next.committed !== null) rememberUse(kind, next.committed);
    onCommit(next.committed);
  }

  function open(text?: string): void {
    act({ kind: 'open', last: lastUse(kind, rules.dimension), ...(text !== undefined && { text }) });
  }

  return { state, act, open };
}
