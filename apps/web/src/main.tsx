import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './tokens.css';
import './base.css';
import './print.css';
import { Page } from './page/Page.tsx';

const place = document.getElementById('page');
if (place)
  createRoot(place).render(
    <StrictMode>
      <Page />
    </StrictMode>,
  );

void import('./sync/sync.ts').then(({ startSync }) => startSync());
