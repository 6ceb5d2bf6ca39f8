import { tabWords } from '../words/page.ts';
import './tabIndex.css';

export type TabName = keyof typeof tabWords;

export const tabNames = Object.keys(tabWords) as readonly TabName[];

interface TabIndexProps {
  readonly tab: TabName;
  /** What each tab says of itself: "as found", "rear open". */
  readonly says: Readonly<Record<TabName, string>>;
  readonly onTab: (tab: TabName) => void;
}

/** The thumb index at the page's edge: a bar below on a phone. */
export function TabIndex({ tab, says, onTab }: TabIndexProps) {
  return (
    <nav className="tab-index" aria-label="Tabs">
      {tabNames.map((name, i) => (
        <button
          type="button"
          key={name}
          className="tab-index-tab"
          aria-current={name === tab ? 'page' : false}
          aria-keyshortcuts={String(i + 1)}
          onClick={() => onTab(name)}
        >
          <TabSign name={name} />
          <span className="tab-index-name">{tabWords[name].name}</span>
          <span className="tab-index-says">{says[name]}</span>
        </button>
      ))}
    </nav>
  );
}

/** Plain line signs: two wheels with a frame; a coil between two plates; a nut with a turn around it. */
const signs: Readonly<Record<TabName, string>> = {
  machine: 'M9 27a7 7 0 1 1 0-14 7 7 0 0 1 0 14Zm22 0a7 7 0 1 1 0-14 7 7 0 0 1 0 14ZM9 20l9-9h9l4 9M26 7h6',
  choose: 'M10 2h20M10 26h20M13 5l14 4-14 4 14 4-14 4 10 3',
  set: 'M20 7l6 3.5v7L20 21l-6-3.5v-7ZM31 21a13 13 0 1 1 2-8M36 9l-3 5-5-3',
};

function TabSign({ name }: { readonly name: TabName }) {
  return (
    <svg className="tab-index-sign" viewBox="0 0 40 28" width="40" height="28" aria-hidden="true">
      <path d={signs[name]} />
    </svg>
  );
}
