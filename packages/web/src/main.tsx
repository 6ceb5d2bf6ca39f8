import '@fontsource/b612/latin-400.css';
import '@fontsource/b612/latin-700.css';
import './theme/tokens.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no element with the id "page"');
createRoot(page).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
