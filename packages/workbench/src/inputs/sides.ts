/** Which strut of an end, as a set-up tells them. */
export type Strut = 'left' | 'right' | 'both' | 'single';

/** What is told of one strut; of both alike; or of left and right, each by itself. */
export type BySide<T> =
  | { readonly single: T }
  | { readonly both: T }
  | { readonly left: T; readonly right: T };

/** What is told of one strut, and where. */
export interface OfStrut<T> {
  readonly side: T;
  readonly path: Strut;
}

/** What is told of each strut of an end. */
export function sidesOf<T>(setting: BySide<T>, count: number): readonly OfStrut<T>[] {
  if ('single' in setting) return [{ side: setting.single, path: 'single' }];
  if ('both' in setting) return Array.from({ length: count }, () => ({ side: setting.both, path: 'both' }));
  return [
    { side: setting.left, path: 'left' },
    { side: setting.right, path: 'right' },
  ];
}
