import { create, type MathNode, parseDependencies } from '../mathjs.js';

const math = create(parseDependencies ?? {});

const longest = 60;
const deepest = 12;
const operations: Readonly<Record<string, (a: number, b: number) => number>> = {
	add: (a, b) => a + b,
	subtract: (a, b) => a - b,
	multiply: (a, b) => a * b,
	divide: (a, b) => a / b,
};

/**
 * The value of a small sum such as "6+9" or "2*(3+1.5)".
 *
 * mathjs only parses; the tree is walked here, and nothing but numbers, brackets and the four operations is let
 * through, so no text can call a function, name a variable or raise a tower of powers.
 *
 * @returns the value, or null where the text is not such a sum or has no finite value
 */
export function evaluateSum(text: string): number | null {
	if (text.length > longest || !/^[\d\s.+\-*/()]+$/.test(text)) return null;
	let tree: MathNode;
	try {
		tree = math.parse(text);
	} catch {
		return null;
	}
	const value = walk(tree, 0);
	return value !== null && Number.isFinite(value) ? value : null;
}

function walk(node: MathNode, depth: number): number | null {
	if (depth > deepest) return null;
	if (math.isConstantNode(node)) return typeof node.value === 'number' ? node.value : null;
	if (math.isParenthesisNode(node)) return walk(node.content, depth + 1);
	if (!math.isOperatorNode(node)) return null;
	const [first, second] = node.args;
	if (first === undefined) return null;
	// A long sum leans to the left; only brackets and signs count as depth.
	const a = walk(first, second === undefined ? depth + 1 : depth);
	if (a === null) return null;
	if (second === undefined) return node.fn === 'unaryMinus' ? -a : node.fn === 'unaryPlus' ? a : null;
	const b = walk(second, depth + 1);
	const operation = operations[node.fn];
	return b === null || operation === undefined ? null : operation(a, b);
}
