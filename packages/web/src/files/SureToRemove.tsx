import { files as words } from '../words/files.ts';

interface SureToRemoveProps {
  readonly onRemove: () => void;
  readonly onLeave: () => void;
}

/** Asks once more before what is kept on this device is removed from it. */
export function SureToRemove({ onRemove, onLeave }: SureToRemoveProps) {
  return (
    <div className="jobs-asking" role="alert">
      <p>{words.removeSure}</p>
      <button type="button" className="key" onClick={onRemove}>
        {words.removeYes}
      </button>
      <button type="button" className="key" onClick={onLeave}>
        {words.removeNo}
      </button>
    </div>
  );
}
