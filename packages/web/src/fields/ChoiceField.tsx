import './Line.css';

interface ChoiceFieldProps<T extends string> {
  readonly label: string;
  readonly path: string;
  readonly value: T;
  readonly choices: readonly { readonly value: T; readonly word: string }[];
  readonly onCommit: (value: T) => void;
}

/** One of a few words. */
export function ChoiceField<T extends string>({
  label,
  path,
  value,
  choices,
  onCommit,
}: ChoiceFieldProps<T>) {
  return (
    <label className="line-face" id={path}>
      <span className="line-label">{label}</span>
      <select
        data-field-face
        value={value}
        onChange={(event) => {
          const chosen = choices.find((choice) => choice.value === event.target.value);
          if (chosen) onCommit(chosen.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.word}
          </option>
        ))}
      </select>
    </label>
  );
}
