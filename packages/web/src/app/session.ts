import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { useCallback, useEffect, useState } from 'react';

import { remember, remembered } from '../storage/remembered.ts';
import type { TabName } from './TabIndex.tsx';

/** What was looked at last on this device, so that a reload comes back to it. */
export interface Session {
  readonly tab: TabName;
  /** Load that is looked at; null for the machine alone. */
  readonly load: string | null;
  readonly shown: SetUpShown;
}

const KEY = 'sagwright-session';
const START: Session = { tab: 'machine', load: null, shown: 'asFound' };

export function useSession(): readonly [Session, (change: Partial<Session>) => void] {
  const [session, setSession] = useState<Session>(() => sessionOf(remembered(KEY)));
  useEffect(() => remember(KEY, JSON.stringify(session)), [session]);
  const look = useCallback(
    (change: Partial<Session>) => setSession((before) => ({ ...before, ...change })),
    [],
  );
  return [session, look];
}

/** A session from its text; what is not of its kind is left at the start. */
export function sessionOf(text: string | null): Session {
  const read = parsed(text);
  const { tab, load, shown } = read as Partial<Record<keyof Session, unknown>>;
  return {
    tab: tab === 'choose' || tab === 'set' ? tab : START.tab,
    load: typeof load === 'string' ? load : START.load,
    shown: shown === 'planned' ? 'planned' : START.shown,
  };
}

function parsed(text: string | null): object {
  if (text === null) return {};
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? value : {};
  } catch (error) {
    if (error instanceof SyntaxError) return {};
    throw error;
  }
}
