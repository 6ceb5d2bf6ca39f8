import { useEffect, useRef } from 'react';
import { keyList as words } from '../words/keys.ts';
import './keyList.css';

/** Which keys do what, over the page until it is closed. */
export default function KeyList({ onClose }: { readonly onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const open = dialog.current;
    open?.showModal();
    return () => open?.close();
  }, []);
  return (
    <dialog ref={dialog} className="key-list" aria-labelledby="key-list-title" onClose={onClose}>
      <h2 id="key-list-title">{words.title}</h2>
      <dl>
        {words.keys.map(([keys, does]) => (
          <div key={does}>
            <dt>
              {keys.map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <button type="button" className="key" onClick={() => dialog.current?.close()}>
        {words.close}
      </button>
    </dialog>
  );
}
