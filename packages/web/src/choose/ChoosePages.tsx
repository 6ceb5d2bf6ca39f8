import type { PageView } from '@sagwright/workbench/page/shapes';
import { choose as words } from '../words/choose.ts';
import { type ChoosePage, choosePages } from './end.ts';

interface ChoosePagesProps {
  readonly view: PageView;
  readonly page: ChoosePage;
  readonly onPage: (page: ChoosePage) => void;
}

/** The pages of the tab, each with what it holds in a word. */
export function ChoosePages({ view, page, onPage }: ChoosePagesProps) {
  const says = (name: ChoosePage): string =>
    name === 'wanted' ? view.targets.name : words.rates(view[name].springs.length);
  return (
    <nav className="choose-pages" aria-label={words.pages}>
      {choosePages.map((name) => (
        <button
          key={name}
          type="button"
          data-page={name}
          aria-current={name === page ? 'page' : undefined}
          onClick={() => onPage(name)}
        >
          <span className="choose-pages-name">{words.page[name]}</span>
          <span className="choose-pages-says">{says(name)}</span>
        </button>
      ))}
    </nav>
  );
}
