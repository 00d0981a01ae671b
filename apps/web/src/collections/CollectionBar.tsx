import { Select } from '../field/Select.tsx';
import { TextField } from '../field/TextField.tsx';
import { say } from '../messages.ts';
import { recordText, isChanged } from '../records/record-text.ts';
import { added, isBlank, updateCollection, removed, type Kind, type Kinds } from '../notebook/kinds.ts';
import { openEntry, withEntry, withNotes, type Entry, type Collection } from '../notebook/collection.ts';
import { updateNotebook } from '../state/notebook.ts';
import { changeWithUndo } from '../state/undo.ts';
import { usePage } from '../state/page-store.ts';
import buttonStyles from '../ui/buttons.module.css';
import fieldRow from '../ui/field-row.module.css';
import styles from './CollectionBar.module.css';

/** Which body, garment or yarn is open, its name, and where it is stored. */
export function CollectionBar<K extends Kind>({
  kind,
  collection,
  nameLabel,
}: {
  readonly kind: K;
  readonly collection: Collection<Kinds[K]>;
  readonly nameLabel: string;
}) {
  const open = openEntry(collection);
  const nameOf = (entry: Entry<Kinds[K]>): string =>
    entry.notes.name.trim() || say.shelf.unnamed(collection.entries.indexOf(entry) + 1);
  const remove = (): void =>
    changeWithUndo(say.shelf.removed(nameOf(open)), (notebook) => removed(notebook, kind, open.key));
  return (
    <div className={styles.bar}>
      <div className={fieldRow.row}>
        {collection.entries.length > 1 && (
          <Select
            label={say.shelf.which}
            value={open.key}
            options={collection.entries.map((entry) => ({ value: entry.key, label: nameOf(entry) }))}
            onValue={(key) =>
              updateNotebook((notebook) => updateCollection(notebook, kind, (it) => ({ ...it, open: key })))
            }
          />
        )}
        <TextField
          label={nameLabel}
          value={open.notes.name}
          onValue={(name) =>
            updateNotebook((notebook) =>
              updateCollection(notebook, kind, (it) => withNotes(it, (notes) => ({ ...notes, name }))),
            )
          }
        />
        <button
          type="button"
          className={buttonStyles.quiet}
          onClick={() => updateNotebook((notebook) => added(notebook, kind))}
        >
          {say.shelf.add}
        </button>
        <button type="button" className={buttonStyles.quiet} onClick={remove}>
          {say.shelf.remove}
        </button>
      </div>
      <StorageStatus kind={kind} entry={open} />
    </div>
  );
}

/** Where the entry is stored, in words, and the choice between two versions that conflict. */
function StorageStatus<K extends Kind>({ kind, entry }: { readonly kind: K; readonly entry: Entry<Kinds[K]> }) {
  const reach = usePage((state) => state.serverReach);
  const { conflict, stored, refused } = entry;
  const states = say.shelf.state;
  const words = conflict
    ? conflict.notes === null
      ? states.gone
      : states.conflict
    : refused !== null
      ? states.refused(refused)
      : !isChanged(kind, entry)
        ? states.stored
        : stored === null && isBlank(kind, entry.notes)
          ? states.empty
          : reach === 'lost'
            ? states.unreachable
            : states.here;
  return (
    <div className={styles.status}>
      <p role="status">{words}</p>
      {conflict && <ConflictChoice kind={kind} entry={entry} conflict={conflict} />}
    </div>
  );
}

/** The choice between two conflicting versions. */
function ConflictChoice<K extends Kind>({
  kind,
  entry,
  conflict,
}: {
  readonly kind: K;
  readonly entry: Entry<Kinds[K]>;
  readonly conflict: NonNullable<Entry<Kinds[K]>['conflict']>;
}) {
  const { notes: theirs, etag } = conflict;
  const resolve = (how: (entry: Entry<Kinds[K]>) => Entry<Kinds[K]>): void =>
    updateNotebook((notebook) =>
      updateCollection(notebook, kind, (collection) => withEntry(collection, entry.key, how)),
    );
  const keepMine = (): void =>
    resolve((it) => ({
      ...it,
      conflict: null,
      stored: theirs === null || it.stored === null ? null : { ...it.stored, etag, seen: '' },
    }));
  const takeTheirs = (): void => {
    if (theirs === null) updateNotebook((notebook) => removed(notebook, kind, entry.key));
    else
      resolve((it) => ({
        ...it,
        notes: theirs,
        conflict: null,
        stored: it.stored && { ...it.stored, etag, seen: recordText(kind, theirs) },
      }));
  };
  return (
    <>
      <button type="button" onClick={keepMine}>
        {say.shelf.keepMine}
      </button>
      <button type="button" onClick={takeTheirs}>
        {theirs === null ? say.shelf.removeHere : say.shelf.takeTheirs}
      </button>
    </>
  );
}
