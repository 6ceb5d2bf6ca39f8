/** Which end's springs are looked at. */
export type ChooseEnd = 'rear' | 'front';
