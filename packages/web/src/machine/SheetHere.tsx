import { lazy, Suspense } from 'react';
import type { MachineSheet, SheetProps } from './sheets.ts';
import './sheetHere.css';

const FiguresSheet = lazy(() => import('./figures/FiguresSheet.tsx'));
const LoadSheet = lazy(() => import('./LoadSheet.tsx'));
const PutOnSheet = lazy(() => import('./PutOnSheet.tsx'));
const StanceSheet = lazy(() => import('./stance/StanceSheet.tsx'));
const ThingSheet = lazy(() => import('./ThingSheet.tsx'));
const WhySheet = lazy(() => import('./WhySheet.tsx'));

/** The sheet that lies open: fetched when it is needed first, so that the page itself stays light. */
export function SheetHere({ sheet, ...props }: SheetProps & { readonly sheet: MachineSheet }) {
  return (
    <div className="sheet-here">
      <Suspense>
        <Sheet sheet={sheet} {...props} />
      </Suspense>
    </div>
  );
}

function Sheet({ sheet, ...props }: SheetProps & { readonly sheet: MachineSheet }) {
  switch (sheet.kind) {
    case 'thing':
      return <ThingSheet key={`${props.load.id} ${sheet.id}`} id={sheet.id} {...props} />;
    case 'put on':
      return <PutOnSheet key={props.load.id} {...props} />;
    case 'load':
      return <LoadSheet key={props.load.id} {...props} />;
    case 'figures':
      return <FiguresSheet asked={sheet} {...props} />;
    case 'stance':
      return <StanceSheet {...props} />;
    case 'why':
      return <WhySheet question={sheet.question} {...props} />;
  }
}
