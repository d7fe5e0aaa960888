/** Loaded when an archive is opened or written: packing and hashing are no part of the first load. */
export { blobsOfJob, readArchive, writeArchive } from '@undercroft/record';
