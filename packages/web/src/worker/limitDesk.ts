/** All that only the list of limits needs: fetched when it is shown first. */
import { whyLimit, whyRoom } from '@sagwright/workbench/limits/whyLimit';
import { limitListView } from '@sagwright/workbench/page/limitListView';

export const limitDesk = { limitListView, whyLimit, whyRoom } as const;
