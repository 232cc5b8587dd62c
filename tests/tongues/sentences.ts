// The English sentences of the sources, as the phrasebooks name them: read from the syntax tree, so that none is missed
// because no example happens to trigger it.

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

interface Sentence {
	/** the sentence with its gaps numbered, as in the phrasebooks */
	readonly key: string;
	/** file and place of use: "topics/wire.ts finding" */
	readonly where: string;
}

const root = fileURLToPath(new URL('../../packages/', import.meta.url));

function* sources(folder: string): Generator<string> {
	for (const entry of readdirSync(folder, { withFileTypes: true })) {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) yield* sources(path);
		else if (path.endsWith('.ts') && !path.endsWith('.test.ts')) yield path;
	}
}

/** Which arguments of the sheet's methods are read by people. */
const toldArguments: Readonly<Record<string, readonly number[]>> = {
	finding: [2],
	refuse: [1, 2],
	answer: [0],
	result: [1, 2],
	assume: [1, 2, 3],
	neighbour: [0, 2],
	tipping: [1, 3],
	step: [0],
	caution: [0, 1, 2, 3, 4, 5, 6, 7],
};

const toldProperties = /^(?:label|question|required|why|governedBy|because|text|instead)$/;
const notForPeople =
	/^(?:aliases|words|examples|yes|no|pattern|formula|kind|unit|help|method|title|purpose)$/;

function keyOf(template: ts.TemplateLiteral): string {
	if (ts.isNoSubstitutionTemplateLiteral(template)) return template.text;
	return template.templateSpans.reduce(
		(text, span, index) => `${text}{${index}}${span.literal.text}`,
		template.head.text,
	);
}

class Collector {
	readonly found: Sentence[] = [];
	/** composed sentences that bypass the phrasebooks */
	readonly untagged: Sentence[] = [];
	readonly #file: string;

	constructor(file: string) {
		this.#file = file;
	}

	/** What an expression at a place that people read may come to. */
	told(node: ts.Expression, where: string): void {
		if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) this.#add(node.text, where);
		else if (ts.isTemplateExpression(node)) this.#addUntagged(keyOf(node), where);
		else if (ts.isConditionalExpression(node)) {
			this.told(node.whenTrue, where);
			this.told(node.whenFalse, where);
		} else if (ts.isBinaryExpression(node)) {
			this.told(node.left, where);
			this.told(node.right, where);
		} else if (ts.isParenthesizedExpression(node)) this.told(node.expression, where);
	}

	visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
		if (ts.isTaggedTemplateExpression(node)) this.#tagged(node);
		if (ts.isCallExpression(node)) {
			const called = node.expression.getText();
			if (/^(?:published|physics|practice|fromMemory)$/.test(called)) return;
			const method = /^sheet\.(\w+)$/.exec(called)?.[1] ?? '';
			for (const index of toldArguments[method] ?? []) {
				const argument = node.arguments[index];
				if (argument !== undefined) this.told(argument, method);
			}
			if (called === 'choice') this.#choice(node);
		}
		if (ts.isPropertyAssignment(node)) {
			const name = node.name.getText();
			if (notForPeople.test(name)) return;
			if (toldProperties.test(name)) this.told(node.initializer, name);
		}
		if (
			ts.isVariableDeclaration(node) &&
			/^caution/.test(node.name.getText()) &&
			node.initializer !== undefined
		) {
			this.told(node.initializer, 'caution');
		}
		ts.forEachChild(node, this.visit);
	};

	#tagged(node: ts.TaggedTemplateExpression): void {
		const tag = node.tag.getText();
		if (!/(?:^|\.)say$|sayFor\(/.test(tag)) return;
		this.#add(keyOf(node.template), 'say');
		if (ts.isTemplateExpression(node.template)) {
			for (const span of node.template.templateSpans) this.told(span.expression, 'value');
		}
	}

	/** The first word of a choice stands for it in answers. */
	#choice(node: ts.CallExpression): void {
		const [options] = node.arguments;
		if (options === undefined || !ts.isObjectLiteralExpression(options)) return;
		for (const property of options.properties) {
			if (!ts.isPropertyAssignment(property) || property.name.getText() !== 'options') continue;
			if (!ts.isObjectLiteralExpression(property.initializer)) continue;
			for (const option of property.initializer.properties) {
				if (!ts.isPropertyAssignment(option) || !ts.isArrayLiteralExpression(option.initializer)) continue;
				const [first] = option.initializer.elements;
				if (first !== undefined) this.told(first, 'choice');
			}
		}
	}

	#add(key: string, where: string): void {
		// Signs and symbols are the same in every language.
		if (/\p{L}{2}/u.test(key.replace(/\{\d+\}/g, ''))) this.found.push(this.#at(key, where));
	}

	#addUntagged(key: string, where: string): void {
		if (/\p{L}{3,}.* |\s\p{L}{3,}/u.test(key.replace(/\{\d+\}/g, '')))
			this.untagged.push(this.#at(key, where));
	}

	#at(key: string, where: string): Sentence {
		return { key, where: `${this.#file} ${where}` };
	}
}

/** What the topics say: everything outside the van's rules, the rule sets, the phrasebooks and generated tables. */
export function topicSentences(): {
	readonly found: readonly Sentence[];
	readonly untagged: readonly Sentence[];
} {
	const folder = join(root, 'core/src');
	const found: Sentence[] = [];
	const untagged: Sentence[] = [];
	for (const path of sources(folder)) {
		const file = relative(folder, path);
		if (/^(?:van|rules|phrases)\/|generated/.test(file)) continue;
		const collector = new Collector(file);
		collector.visit(ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true));
		found.push(...collector.found);
		untagged.push(...collector.untagged);
	}
	return { found, untagged };
}

/** What the cross-checks of a van find and ask, and the questions of its equipment. */
export function vanSentences(): readonly Sentence[] {
	const folder = join(root, 'core/src/van');
	const found: Sentence[] = [];
	for (const path of sources(folder)) {
		const tree = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
		const where = relative(folder, path);
		const add = (node: ts.Node | undefined): void => {
			if (node === undefined) return;
			if (ts.isConditionalExpression(node)) {
				add(node.whenTrue);
				add(node.whenFalse);
			} else if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) {
				if (/\p{L}{2}/u.test(node.text)) found.push({ key: node.text, where });
			} else if (ts.isTemplateLiteral(node)) {
				const key = keyOf(node);
				if (/\p{L}{2}/u.test(key.replace(/\{\d+\}/g, ''))) found.push({ key, where });
			}
		};
		const visit = (node: ts.Node): void => {
			if (ts.isTaggedTemplateExpression(node) && /(?:^|\.)say$/.test(node.tag.getText())) add(node.template);
			if (ts.isCallExpression(node)) {
				const called = node.expression.getText();
				if (called === 'found' || called === 'unknown' || called === 'unknownKind') add(node.arguments[1]);
			}
			if (ts.isPropertyAssignment(node) && /^(?:required|question)$/.test(node.name.getText())) {
				add(node.initializer);
			}
			ts.forEachChild(node, visit);
		};
		visit(tree);
		found.push(...fixedQuestions(tree).map((key) => ({ key, where })));
	}
	return found;
}

/** Questions that are handed on by name: texts that end in a question mark. */
function fixedQuestions(tree: ts.SourceFile): string[] {
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isStringLiteral(node) && /^[A-Z].* .*\?$/.test(node.text)) found.push(node.text);
		ts.forEachChild(node, visit);
	};
	visit(tree);
	return found;
}

/**
 * What the conversation says of itself: texts of a few words or more that begin as a sentence does, and what is composed
 * by the tag.
 */
export function conversationSentences(): readonly Sentence[] {
	const found: Sentence[] = [];
	for (const file of conversationFiles) {
		const path = join(root, file);
		const tree = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
		const visit = (node: ts.Node): void => {
			if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
			if (ts.isRegularExpressionLiteral(node)) return;
			if (ts.isThrowStatement(node)) return;
			const key = ts.isTemplateExpression(node)
				? keyOf(node)
				: ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)
					? node.text
					: '';
			if (/^(?:[A-Z"]|\{\d+\} (?:is|has)).*\p{L}{2,} .*\p{L}{2,}/u.test(key))
				found.push({ key, where: file });
			ts.forEachChild(node, visit);
		};
		visit(tree);
	}
	return found;
}

const conversationFiles = [
	'chat/src/question.ts',
	'chat/src/failure.ts',
	'chat/src/turn.ts',
	'chat/src/bot/words.ts',
	'chat/src/bot/form-words.ts',
	'chat/src/commands/ask.ts',
	'chat/src/commands/size.ts',
	'chat/src/render/parts.ts',
	'chat/src/again.ts',
	'chat/src/commands/log.ts',
	'chat/src/book/sign-build.ts',
	'chat/src/book/verbs.ts',
	'chat/src/review/about.ts',
	'chat/src/review/build-signature.ts',
	'chat/src/review/dates.ts',
	'chat/src/review/digest.ts',
	'chat/src/review/leads.ts',
	'chat/src/review/me.ts',
	'chat/src/review/no-answer.ts',
	'chat/src/review/people.ts',
	'chat/src/review/picture.ts',
	'chat/src/review/replace.ts',
	'chat/src/review/root.ts',
	'chat/src/review/shown.ts',
	'chat/src/review/sign.ts',
	'chat/src/review/verbs.ts',
	'chat/src/review/withdraw.ts',
	'language/src/decline.ts',
	'language/src/fill.ts',
	'language/src/value.ts',
	'language/src/typed.ts',
];
