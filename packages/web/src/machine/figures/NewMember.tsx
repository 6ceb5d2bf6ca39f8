import type { ReactNode } from 'react';

interface NewMemberProps {
  readonly title: string;
  /** What the key that makes it says. */
  readonly doWord: string;
  /** Null until it has all that it must have. */
  readonly onMake: (() => void) | null;
  /** Its fields. */
  readonly children: ReactNode;
}

/** Something that the job did not know: a few fields, and the key that makes it. */
export function NewMember({ title, doWord, onMake, children }: NewMemberProps) {
  return (
    <fieldset className="sheet-new">
      <legend>{title}</legend>
      <div className="sheet-fields">
        {children}
        <button
          type="button"
          className="key"
          data-do
          disabled={onMake === null}
          onClick={onMake ?? undefined}
        >
          {doWord}
        </button>
      </div>
    </fieldset>
  );
}
