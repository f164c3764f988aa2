import { version } from '../../package.json';

/** A hash of the sources, put in by whoever bundles or tests them. */
declare const CUTWRIGHT_SOURCES: string | undefined;

/** Which program this is: two of one name print the same. */
export const PROGRAM = typeof CUTWRIGHT_SOURCES === 'string' ? `${version} ${CUTWRIGHT_SOURCES}` : version;
