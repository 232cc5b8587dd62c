import { fileURLToPath } from 'node:url';
import { answerSchema } from '@lugbook/chat';
import { expect, test } from 'vitest';
import { z } from 'zod';

test('docs/answer.schema.json is the schema of today', async () => {
	const schema = z.toJSONSchema(answerSchema, { target: 'draft-2020-12' });
	await expect(`${JSON.stringify(schema, null, '\t')}\n`).toMatchFileSnapshot(
		fileURLToPath(new URL('../../docs/answer.schema.json', import.meta.url)),
	);
});
