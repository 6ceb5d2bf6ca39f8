import type { WhyQuestion } from '@sagwright/workbench/why/question';
import { lazy, Suspense } from 'react';

const WhySheet = lazy(() => import('../machine/WhySheet.tsx'));

interface SpringWhyProps {
  readonly question: WhyQuestion;
  readonly onClose: () => void;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

/** A figure of the plan opened up, right below where it stands. */
export function SpringWhy({ question, onClose, onField }: SpringWhyProps) {
  return (
    <div className="spring-why">
      <Suspense>
        <WhySheet
          question={{ of: 'plan', asked: question }}
          onSheet={(sheet) => {
            onClose();
            if (sheet?.kind === 'figures' && sheet.path !== null) onField(sheet.path);
          }}
        />
      </Suspense>
    </div>
  );
}
