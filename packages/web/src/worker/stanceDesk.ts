/** All that only the sheet of how a load stands needs: fetched when it is opened first. */
import { stanceView } from '@sagwright/workbench/page/stanceView';
import { whyStance } from '@sagwright/workbench/stance/whyStance';

export const stanceDesk = { stanceView, whyStance } as const;
