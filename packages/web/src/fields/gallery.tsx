import '@fontsource/b612/latin-400.css';
import '@fontsource/b612/latin-700.css';
import '../theme/tokens.css';
import './gallery.css';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { useState } from 'react';
import { createRoot } from 'react-dom/client';
import { ChoiceField } from './ChoiceField.tsx';
import { CountField } from './CountField.tsx';
import { QuantityField, type QuantityFieldProps } from './QuantityField.tsx';
import { ShareField } from './ShareField.tsx';
import { TextField } from './TextField.tsx';

/** Every field in every state, for looking at and for trying out; no part of the page. Figures are invented. */
function Gallery() {
  const [log, setLog] = useState<readonly string[]>([]);
  const told = (path: string) => (value: unknown) =>
    setLog((lines) => [...lines, `${path} ${JSON.stringify(value)}`]);
  return (
    <main className="gallery">
      <h1>Fields in every state</h1>
      <section>
        <h2>Quantities</h2>
        <Try
          label="After a push, rear"
          path="push"
          dimension="length"
          bound="shockLength"
          reading="tape"
          step={0.0005}
          quantity={{ value: 571.5, unit: 'mm', plusMinus: { value: 1, unit: 'mm' }, origin: 'own tape' }}
          told={told('push')}
        />
        <Try
          label="Hanging"
          path="hanging"
          dimension="length"
          bound="shockLength"
          reading="tape"
          step={0.0005}
          told={told('hanging')}
          quantity={{ value: 608, unit: 'mm', plusMinus: { value: 1, unit: 'mm' }, origin: 'own tape' }}
        />
        <Try
          label="Rear spring"
          path="spring"
          dimension="rate"
          bound="springRate"
          reading="springRate"
          told={told('spring')}
          quantity={{ value: 160, unit: 'lbf/in', plusMinus: { value: 5, unit: '%' }, origin: 'marked' }}
        />
        <Try
          label="Rear spring, shown in N/mm"
          path="shown"
          dimension="rate"
          bound="springRate"
          showIn="N/mm"
          told={told('shown')}
          quantity={{ value: 160, unit: 'lbf/in', origin: 'marked' }}
        />
        <Try
          label="Rear scale"
          path="scale"
          dimension="mass"
          bound="massOnWheel"
          reading="scale"
          step={0.5}
          told={told('scale')}
          quantity={{ value: 255, unit: 'kg', plusMinus: { value: 1, unit: 'kg' }, origin: 'own scale' }}
        />
        <Try
          label="Rear tyre rate"
          path="tyre"
          dimension="rate"
          bound="tyreRate"
          reading="tyreRate"
          told={told('tyre')}
          assumed={{
            value: 185e3,
            halfWidth: 30e3,
            why: 'touring tyres at their pressure give 150 to 220 N/mm',
          }}
        />
        <Try
          label="Solid length"
          path="solid"
          dimension="length"
          bound="springLength"
          reading="springLength"
          told={told('solid')}
        />
        <Try
          label="Rake"
          path="rake"
          dimension="angle"
          bound="rake"
          reading="angle"
          told={told('rake')}
          quantity={{ value: 28, unit: 'deg' }}
        />
        <Try
          label="Wrong in the file"
          path="wrong"
          dimension="length"
          bound="wheelbase"
          told={told('wrong')}
          quantity={{ value: 160, unit: 'mm' }}
        />
      </section>
      <section>
        <h2>Small ones, for rows</h2>
        <div className="gallery-row">
          <Try
            small
            label="Left"
            path="left"
            dimension="length"
            bound="collarReading"
            reading="collar"
            told={told('left')}
            quantity={{ value: 17, unit: 'mm' }}
          />
          <Try
            small
            label="Right"
            path="right"
            dimension="length"
            bound="collarReading"
            reading="collar"
            told={told('right')}
            quantity={{ value: 18, unit: 'mm', origin: 'told' }}
          />
          <Try
            small
            label="Cold, front"
            path="cold"
            dimension="pressure"
            bound="tyrePressure"
            told={told('cold')}
          />
        </div>
      </section>
      <section>
        <h2>Counts, shares, words</h2>
        <Plain told={told} />
      </section>
      <output aria-label="Written">{log.join(' · ')}</output>
    </main>
  );
}

type TryProps = Omit<QuantityFieldProps, 'quantity' | 'onCommit'> & {
  quantity?: Quantity;
  told: (value: unknown) => void;
};

function Try({ told, quantity: first, ...props }: TryProps) {
  const [quantity, setQuantity] = useState(first);
  return (
    <QuantityField
      {...props}
      quantity={quantity}
      onCommit={(value) => {
        setQuantity(value ?? undefined);
        told(value);
      }}
    />
  );
}

function Plain({ told }: { told: (path: string) => (value: unknown) => void }) {
  const [name, setName] = useState('Sunday with Idun');
  const [kind, setKind] = useState<'solo' | 'sidecar'>('solo');
  const [clicks, setClicks] = useState<number | null>(9);
  const [share, setShare] = useState<number | null>(35);
  return (
    <>
      <TextField
        label="What this load is called"
        path="name"
        value={name}
        most={60}
        onCommit={(value) => {
          setName(value);
          told('name')(value);
        }}
      />
      <ChoiceField
        label="Kind of machine"
        path="kind"
        value={kind}
        choices={[
          { value: 'solo', word: 'solo' },
          { value: 'sidecar', word: 'with a sidecar' },
        ]}
        onCommit={setKind}
      />
      <CountField
        label="Rebound, out from closed"
        path="clicks"
        value={clicks ?? undefined}
        unit="clicks"
        most={22}
        onCommit={(value) => {
          setClicks(value);
          told('clicks')(value);
        }}
      />
      <ShareField
        label="Share of the riding"
        path="share"
        value={share ?? undefined}
        onCommit={(value) => {
          setShare(value);
          told('share')(value);
        }}
      />
    </>
  );
}

createRoot(document.getElementById('page')!).render(<Gallery />);
