import { createElement, Fragment, type ReactNode } from 'react';

/** Marks painted as children by their place, for such as have no name to be known by: one that changes is rewritten where it is. */
export function byPlace<T>(marks: readonly T[], paint: (mark: T) => ReactNode): ReactNode {
  return createElement(Fragment, null, ...marks.map(paint));
}
