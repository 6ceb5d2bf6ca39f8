import './choiceList.css';

interface ChoiceListProps {
  readonly label: string;
  readonly chosen: string;
  readonly choices: readonly { readonly value: string; readonly word: string; readonly more?: string }[];
  readonly onChoose: (value: string) => void;
}

/** One of several, all in sight, each large enough for a finger. */
export function ChoiceList({ label, chosen, choices, onChoose }: ChoiceListProps) {
  return (
    <fieldset className="choice-list">
      <legend>{label}</legend>
      {choices.map(({ value, word, more }) => (
        <button
          key={value}
          type="button"
          className="key"
          aria-pressed={value === chosen}
          onClick={() => onChoose(value)}
        >
          <span>{word}</span>
          {more !== undefined && <b>{more}</b>}
        </button>
      ))}
    </fieldset>
  );
}
