import { type RefObject, useLayoutEffect, useRef } from 'react';

/** How long a move is seen [ms]. */
const MOVE = 120;

/** Where a mark stands and how high it is, px. */
interface Stretch {
  readonly y: number;
  readonly height: number;
}

/**
 * Lets a mark be seen moving from where it stood to where it stands. It is painted at its new place at once and shown from the old
 * one by a transform, which the browser moves by itself: nothing is laid out or painted on the way. None where motion is not wanted.
 */
export function useMoved<E extends Element>(stands: Stretch | null): RefObject<E | null> {
  const ref = useRef<E | null>(null);
  const stood = useRef<Stretch | null>(null);
  const y = stands?.y;
  const height = stands?.height;
  useLayoutEffect(() => {
    const from = stood.current;
    const to = y === undefined || height === undefined ? null : { y, height };
    stood.current = to;
    if (from === null || to === null || ref.current === null || to.height === 0) return;
    if (from.y === to.y && from.height === to.height) return;
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    const before = `translateY(${from.y - to.y}px) scaleY(${from.height / to.height})`;
    ref.current.animate({ transform: [before, 'none'] }, { duration: MOVE, easing: 'ease' });
  }, [y, height]);
  return ref;
}
