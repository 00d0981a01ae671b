import { EntitySchema } from 'typeorm';

interface MakerRow {
  id: string;
  createdAt: string;
}

export const MAKER = new EntitySchema<MakerRow>({
  name: 'maker',
  columns: {
    id: { type: 'varchar', length: 36, primary: true },
    createdAt: { type: 'varchar', length: 30, name: 'created_at' },
  },
});
