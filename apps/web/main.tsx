import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Desk } from './desk.js';
import './styles/fonts.css';
import './styles/paper.css';
import './styles/page.css';
import './styles/tables.css';
import './styles/figures.css';
import './styles/print.css';

const container = document.getElementById('page');
if (container === null) throw new Error('index.html holds no element with the id "page"');
createRoot(container).render(
  <StrictMode>
    <Desk />
  </StrictMode>,
);
