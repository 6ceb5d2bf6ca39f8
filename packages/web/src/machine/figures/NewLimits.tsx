import { jobOf, useTable } from '../../app/useJob.ts';
import { NewClearance } from './NewClearance.tsx';
import { NewKnob } from './NewKnob.tsx';
import { RemoveKeys } from './RemoveKeys.tsx';

/** Rooms near full bump and knobs that the job did not know, and keys that take one out. */
export function NewLimits() {
  const { state } = useTable();
  const { machine } = jobOf(state);
  return (
    <>
      <NewClearance />
      <NewKnob />
      <div className="sheet-keys">
        <RemoveKeys list="clearances" members={machine.clearances ?? {}} />
        <RemoveKeys list="knobs" members={machine.knobs ?? {}} />
      </div>
    </>
  );
}
