/** A sentence whose figures stay on one line: ± with its number, a number with its unit. */
export function whole(text: string): string {
  return text
    .replace(/± /g, '±\u00a0')
    .replace(/(\d) (?=±|mm\b|kg\b|in\b|lb\b|%|deg\b|N\/mm\b)/g, '$1\u00a0');
}
