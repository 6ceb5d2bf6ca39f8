import '@fontsource/b612/latin-400.css';
import '@fontsource/b612/latin-700.css';
import '../theme/tokens.css';
import { useState } from 'react';
import { createRoot } from 'react-dom/client';
import { AsTable } from './AsTable.tsx';
import { frontLadder, longLadder, reachHeadInput, reachRows, rearLadder, sideViews } from './invented.ts';
import { LadderLegend } from './ladder/LadderLegend.tsx';
import { TravelLadder } from './ladder/TravelLadder.tsx';
import { ladderLanes, ladderScale, travelLadder, travelLadderTable } from './ladder/travelLadder.ts';
import { ReachHead } from './reach/ReachHead.tsx';
import { ReachLine } from './reach/ReachLine.tsx';
import { reachDomain } from './reach/reachInput.ts';
import { reachLineTable } from './reach/reachLine.ts';
import { SideView } from './side/SideView.tsx';
import { sideView, sideViewTable } from './side/sideView.ts';
import type { SideViewInput } from './side/sideViewInput.ts';

/** Every drawing with invented data, for whoever works on them. Not part of the built page. */
function Gallery() {
  const room = document.documentElement.clientWidth;
  const width = room >= 1200 ? 640 : room >= 700 ? 728 : room;
  const sideHeight = width < 560 ? Math.round(width * 0.72) + 100 : Math.round(width * 0.58) + 100;
  return (
    <main style={{ background: 'var(--sheet)', color: 'var(--ink)', padding: 0 }}>
      {Object.entries(sideViews).map(([name, input]) => (
        <section key={name} id={name.replaceAll(/[ ,]+/g, '-')}>
          <h2>{name}</h2>
          <Loaded input={input} size={{ width, height: sideHeight }} />
        </section>
      ))}
      <Ladders width={width} />
      <Reaches width={width < 560 ? width : width - 160} />
    </main>
  );
}

function Loaded({ input, size }: { input: SideViewInput; size: { width: number; height: number } }) {
  const [selected, setSelected] = useState(input.carried.find((thing) => thing.selected)?.id ?? null);
  const carried = input.carried.map((thing) => ({ ...thing, selected: thing.id === selected }));
  const shown = { ...input, carried };
  return (
    <>
      <SideView input={shown} marks={sideView(shown, size)} onSelect={setSelected} />
      <AsTable table={() => sideViewTable(input)} />
    </>
  );
}

function Ladders({ width }: { width: number }) {
  const each = width < 560 ? width : width / 2 - 8;
  const pxPerMm = ladderScale([rearLadder, frontLadder], width < 560 ? 300 : 320);
  return (
    <section id="ladders">
      <div style={{ display: 'flex', flexWrap: 'wrap', gap: 16 }}>
        {[rearLadder, frontLadder, longLadder].map((input) => (
          <TravelLadder
            key={input.lanes.length + input.end}
            input={input}
            marks={travelLadder(input, { width: each, pxPerMm, lanes: ladderLanes([input], each, 62) })}
          />
        ))}
      </div>
      <LadderLegend measured />
      <AsTable table={() => travelLadderTable(longLadder)} />
    </section>
  );
}

function Reaches({ width }: { width: number }) {
  const domain = reachDomain(reachRows);
  return (
    <section id="reaches">
      <ReachHead input={{ ...reachHeadInput, domain }} width={width} />
      {reachRows.map((row) => (
        <ReachLine key={row.spring} input={{ ...row, domain }} width={width} />
      ))}
      {reachRows.slice(0, 1).map((row) => (
        <AsTable key={row.spring} table={() => reachLineTable({ ...row, domain })} />
      ))}
    </section>
  );
}

const page = document.getElementById('gallery');
if (page === null) throw new Error('drawings.html has no element with the id "gallery"');
createRoot(page).render(<Gallery />);
