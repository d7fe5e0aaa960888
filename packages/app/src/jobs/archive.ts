/** Loaded when an archive is opened or written: packing and hashing are no part of the first load. */
export { readArchive, writeArchive } from '@undercroft/record';
