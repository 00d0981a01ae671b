import type { FormHTMLAttributes, SubmitEvent } from 'react';
import styles from './FieldForm.module.css';

const stay = (event: SubmitEvent): void => event.preventDefault();

/**
 * What a field is written on; nothing is sent by it. Each is a form of its own because browsers look through a whole form
 * after each key, to fill it in the next time.
 */
export const FieldForm = (more: FormHTMLAttributes<HTMLFormElement>) => (
  <form {...more} className={styles.form} onSubmit={stay} />
);
