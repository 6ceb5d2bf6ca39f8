import '../fields/key.css';
import { brokenPage as words } from '../words/files.ts';
import './brokenPage.css';

interface BrokenPageProps {
  /** What broke, in the browser's words. */
  readonly why: string;
  readonly onToFile: () => void;
  readonly onAgain: () => void;
  readonly onAside: () => void;
}

/** Stands in the page's place where a fault of the page itself ended it: the job can still be copied out. */
export function BrokenPage({ why, onToFile, onAgain, onAside }: BrokenPageProps) {
  return (
    <main className="broken-page">
      <h1>{words.title}</h1>
      <p>{words.says}</p>
      <div className="broken-page-keys">
        <button type="button" className="key" data-do onClick={onToFile}>
          {words.toFile}
        </button>
        <button type="button" className="key" onClick={onAgain}>
          {words.again}
        </button>
        <button type="button" className="key" onClick={onAside}>
          {words.aside}
        </button>
      </div>
      <p className="broken-page-why">{why}</p>
    </main>
  );
}
