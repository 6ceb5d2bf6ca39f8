/** The whole page. */
export function App() {
  return <main>Sagwright</main>;
}
