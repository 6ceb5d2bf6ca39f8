import type { EndSetting, Side } from '@sagwright/records/schema/setups';

/** Which strut of an end, as a set-up tells them. */
export type Strut = 'left' | 'right' | 'both' | 'single';

/** The sides of an end setting, one for each strut. */
export function sidesOf(
  setting: EndSetting,
  count: number,
): readonly { readonly side: Side; readonly path: Strut }[] {
  if ('single' in setting) return [{ side: setting.single, path: 'single' }];
  if ('both' in setting) return Array.from({ length: count }, () => ({ side: setting.both, path: 'both' }));
  return [
    { side: setting.left, path: 'left' },
    { side: setting.right, path: 'right' },
  ];
}
