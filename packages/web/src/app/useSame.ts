import { useRef } from 'react';
import { sameParts } from './sameParts.ts';

/**
 * A value of plain data with every part that is as it was being that very part (`sameParts`), from one painting to the next. What is
 * remembered is never shown, only compared with, so that it does no harm when a painting is begun and thrown away.
 */
export function useSame<T>(value: T): T {
  const kept = useRef(value);
  kept.current = sameParts(kept.current, value);
  return kept.current;
}
