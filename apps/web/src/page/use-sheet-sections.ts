import { lazyModule } from '../ui/lazy-module.ts';

/** The components that show a sheet, loaded when they are first wanted. */
export const useSheetSections = lazyModule(() => import('./sheet-sections.ts'));
