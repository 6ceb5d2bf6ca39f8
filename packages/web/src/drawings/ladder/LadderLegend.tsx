import './TravelLadder.css';

/** What the signs of a ladder mean, in one line that wraps; the sign of a reading where there is one. */
export function LadderLegend({ measured }: { readonly measured: boolean }) {
  return (
    <ul className="ladder-legend">
      <li>
        <svg width={32} height={20} aria-hidden="true">
          <rect className="ladder-wanted" x={1} y={4} width={30} height={12} />
          <path className="ladder-rails" d="M1 4h30M1 16h30" />
        </svg>
        wanted
      </li>
      <li>
        <svg width={22} height={20} aria-hidden="true">
          <rect className="ladder-block" x={0} y={3} width={22} height={14} />
          <path className="ladder-mid" d="M0 10h22" />
        </svg>
        rests, friction band
      </li>
      <li>
        <svg width={18} height={20} aria-hidden="true">
          <path className="ladder-doubt" d="M1 2h16M9 2v16M1 18h16" />
        </svg>
        ± of the sum
      </li>
      {measured && (
        <li>
          <svg width={18} height={20} aria-hidden="true">
            <path className="ladder-measured" d="M2 2v16L17 10Z" />
          </svg>
          measured
        </li>
      )}
      <li>
        <svg width={32} height={20} aria-hidden="true">
          <path className="ladder-rubber" d="M1 13L10 4M1 20L17 4M9 20L25 4M17 20L31 6M25 20L31 14" />
        </svg>
        bump rubber
      </li>
      <li>% of all travel, rubber included</li>
    </ul>
  );
}
