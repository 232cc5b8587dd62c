/**
 * Errors of a refused body, in the platform's shape: code 50035 with a tree of `_errors` at the fields
 * (discord-api-docs, reference: "Error Messages"; the codes of single fields are as shown there).
 */

import { isObject, type JsonObject } from '../common/json.js';

export interface Problem {
	/** path in the body, as in `embeds.0.fields.2.value` */
	readonly where: string;
	readonly rule: string;
}

export class FormErrors {
	readonly problems: Problem[] = [];

	add(where: string, rule: string): void {
		this.problems.push({ where, rule });
	}

	get any(): boolean {
		return this.problems.length > 0;
	}

	/** Length in UTF-16 code units, the larger of the possible counts. */
	length(where: string, value: unknown, max: number, min = 0): void {
		if (value === undefined || value === null) {
			if (min > 0) this.add(where, 'This field is required');
		} else if (typeof value !== 'string') {
			this.add(where, 'Must be a string');
		} else if (value.length > max || value.length < min) {
			this.add(where, `Must be between ${min} and ${max} in length (got ${value.length}).`);
		}
	}

	/** The value's items when it is a list, with a complaint when it is none or of a wrong size. */
	list(where: string, value: unknown, max: number, min = 0): JsonObject[] {
		if (value === undefined || value === null) {
			if (min > 0) this.add(where, 'This field is required');
			return [];
		}
		if (!Array.isArray(value)) {
			this.add(where, 'Must be a list');
			return [];
		}
		if (value.length > max || value.length < min) {
			this.add(where, `Must be between ${min} and ${max} in length (got ${value.length}).`);
		}
		return value.map((one) => (isObject(one) ? one : {}));
	}

	body(): JsonObject {
		const errors: JsonObject = {};
		for (const { where, rule } of this.problems) {
			let node = errors;
			for (const step of where.split('.')) {
				const next = isObject(node[step]) ? (node[step] as JsonObject) : {};
				node[step] = next;
				node = next;
			}
			const listed = Array.isArray(node._errors) ? node._errors : [];
			node._errors = [...listed, { code: 'BASE_TYPE_INVALID', message: rule }];
		}
		return { message: 'Invalid Form Body', code: 50035, errors };
	}
}
