import type { ReactNode, SubmitEvent } from 'react';

const stay = (event: SubmitEvent): void => event.preventDefault();

/**
 * What is written on in one part of the page; nothing is sent by it. A form of its own because browsers look through a whole
 * form after each key, to fill it in the next time.
 */
export const Written = ({ children }: { readonly children: ReactNode }) => <form onSubmit={stay}>{children}</form>;
