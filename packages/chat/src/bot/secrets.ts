/** Secrets at rest: AES-256 in Galois/Counter Mode (NIST SP 800-38D), a fresh 96-bit nonce for each. */

import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';

const KEY_BYTES = 32;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;
const FORM = 'v1';

/** Reads a key of 32 bytes in base64 or hexadecimal; null when it is none. */
export function tokenKey(text: string): Buffer | null {
	const bytes = /^[0-9a-f]{64}$/i.test(text) ? Buffer.from(text, 'hex') : Buffer.from(text, 'base64');
	return bytes.length === KEY_BYTES ? bytes : null;
}

/**
 * Encrypts a text.
 * @param about what the secret belongs to; it opens only under the same words, so that one can't be put in place of another
 */
export function sealed(text: string, key: Buffer, about: string): string {
	const nonce = randomBytes(NONCE_BYTES);
	const cipher = createCipheriv('aes-256-gcm', key, nonce).setAAD(Buffer.from(about));
	const bytes = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
	return [FORM, Buffer.concat([nonce, cipher.getAuthTag(), bytes]).toString('base64')].join(':');
}

/** @throws Error when the key is another, the text was changed or belongs to something else */
export function unsealed(text: string, key: Buffer, about: string): string {
	const [form, payload = ''] = text.split(':');
	const bytes = Buffer.from(payload, 'base64');
	if (form !== FORM || bytes.length < NONCE_BYTES + TAG_BYTES) throw new Error('this is no sealed secret');
	const nonce = bytes.subarray(0, NONCE_BYTES);
	const tag = bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES);
	const decipher = createDecipheriv('aes-256-gcm', key, nonce, { authTagLength: TAG_BYTES })
		.setAAD(Buffer.from(about))
		.setAuthTag(tag);
	try {
		return Buffer.concat([
			decipher.update(bytes.subarray(NONCE_BYTES + TAG_BYTES)),
			decipher.final(),
		]).toString('utf8');
	} catch {
		throw new Error('the secret does not open: LUGBOOK_TOKEN_KEY is another one, or the secret was changed');
	}
}
