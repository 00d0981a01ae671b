import { lazyModule } from '../ui/lazy-module.ts';

/** What comes of the writing, fetched when it is wanted. Not React's own `lazy`: without a connection it must not take the page down. */
export const useSheetSections = lazyModule(() => import('./sheet-sections.ts'));
