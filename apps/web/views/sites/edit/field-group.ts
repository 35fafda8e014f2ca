import type { CampusFile } from '../../../api.js';
import type { Fields } from './site-fields.js';

/** What every group of fields of a site's form gets. */
export interface FieldGroupProps {
  readonly file: CampusFile;
  readonly fields: Fields;
  readonly set: (field: string, text: string) => void;
}
