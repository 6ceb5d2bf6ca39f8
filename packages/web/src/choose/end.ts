/** Which end's springs are looked at. */
export type ChooseEnd = 'rear' | 'front';

/** The pages of the Choose tab, in their order. */
export const choosePages = ['rear', 'front', 'wanted'] as const;

export type ChoosePage = (typeof choosePages)[number];
