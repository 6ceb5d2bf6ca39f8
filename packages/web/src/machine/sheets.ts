import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import type { FigureQuestion } from '../worker/messages.ts';

/** What lies open beside the picture; null: nothing. */
export type MachineSheet =
  | { readonly kind: 'thing'; readonly id: string }
  | { readonly kind: 'put on' }
  | { readonly kind: 'load' }
  /** The machine's own figures; with a path, that field is gone to and opened. */
  | { readonly kind: 'figures'; readonly path: string | null }
  /** How the load stands and steers. */
  | { readonly kind: 'stance' }
  | { readonly kind: 'why'; readonly question: FigureQuestion };

export type OpenSheet = (sheet: MachineSheet | null) => void;

/** What every sheet is given. */
export interface SheetProps {
  readonly view: PageView;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onChoose: (load: string | null) => void;
  readonly onSheet: OpenSheet;
}
