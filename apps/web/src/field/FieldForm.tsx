import type { FormHTMLAttributes, SubmitEvent } from 'react';
import styles from './FieldForm.module.css';

const stay = (event: SubmitEvent): void => event.preventDefault();

/**
 * A form around a single field; it submits nothing. One form for each field because browsers search the whole form after every
 * key press, to offer autofill.
 */
export const FieldForm = (more: FormHTMLAttributes<HTMLFormElement>) => (
  <form {...more} className={styles.form} onSubmit={stay} />
);
