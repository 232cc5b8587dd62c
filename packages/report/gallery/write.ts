import { writeFileSync } from 'node:fs';

/** Writes a picture of the docs anew where the environment asks for it (UPDATE_GALLERY=1); else null. */
export const writePictures: ((path: URL, png: Uint8Array) => void) | null =
	process.env.UPDATE_GALLERY === '1' ? (path, png) => writeFileSync(path, png) : null;
