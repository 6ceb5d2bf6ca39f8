/** A ringed letter; two wheels for the machine alone. */
export function LoadSign({ letter }: { readonly letter: string | null }) {
  if (letter === null) {
    return (
      <svg className="load-sign" viewBox="0 0 36 20" width="36" height="20" aria-hidden="true">
        <path d="M8 19a6 6 0 1 1 0-12 6 6 0 0 1 0 12Zm20 0a6 6 0 1 1 0-12 6 6 0 0 1 0 12ZM8 13l8-7h8l4 7" />
      </svg>
    );
  }
  return <span className="load-letter">{letter}</span>;
}
