/** How sure a printed value is: read in a page that states it, remembered, or worked out from the others. */
export type Mark = 'read in a published page' | 'from memory, partly confirmed' | 'from memory' | 'derived';
