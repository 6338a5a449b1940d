// The version of this program.
import { version } from '../../package.json';

export const VERSION: string = version;
