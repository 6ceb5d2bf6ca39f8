import './key.css';
import './Steppers.css';
import * as words from '../words/fields.ts';

/** − and + beside a field. */
export function Steppers(props: {
  readonly label: string;
  readonly step: string;
  readonly onStep: (times: 1 | -1) => void;
}) {
  return (
    <span className="steppers">
      <button
        type="button"
        className="key"
        aria-label={words.lessBy(props.label, props.step)}
        onClick={() => props.onStep(-1)}
      >
        −
      </button>
      <button
        type="button"
        className="key"
        aria-label={words.moreBy(props.label, props.step)}
        onClick={() => props.onStep(1)}
      >
        +
      </button>
    </span>
  );
}
