import { useEffect, useRef, useState } from 'react';

/** How long a change must have settled before it is said [ms], so that steps in a row are said once. */
const SETTLED = 700;

/** Says a sentence aloud only, once whenever it has changed; not the one that the page came with. */
export function SaidOnce({ sentence }: { readonly sentence: string }) {
  const [said, setSaid] = useState('');
  const first = useRef<string | null>(sentence);
  useEffect(() => {
    if (sentence === first.current) return;
    first.current = null;
    const timer = setTimeout(() => setSaid(sentence), SETTLED);
    return () => clearTimeout(timer);
  }, [sentence]);
  return (
    <p className="spoken" role="status">
      {said}
    </p>
  );
}
