import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Branch, type Network, risesOf, type SolvedNetwork, solveNetwork } from './network.js';

function solved(network: Network): SolvedNetwork {
	const solution = solveNetwork(network);
	if ('reason' in solution) throw new Error(JSON.stringify(solution));
	return solution;
}

const supply = { '+': 12, '-': 0 };

/** A tree or mesh of both rails, with loads anywhere. */
const networks: fc.Arbitrary<Network> = fc
	.record({
		nodes: fc.integer({ min: 1, max: 30 }),
		seeds: fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 60, maxLength: 60 }),
		ohms: fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 90, maxLength: 90 }),
		loops: fc.integer({ min: 0, max: 6 }),
		watts: fc.array(fc.integer({ min: -20, max: 60 }), { minLength: 30, maxLength: 30 }),
	})
	.map(({ nodes, seeds, ohms, loops, watts }) => {
		// 0.01 mohm to 10 mohm: busbars and long branches in one network
		const ohm = (index: number) => 1e-5 * 1000 ** ((ohms[index % 90] as number) / 1000);
		const rail = (sign: string, node: number) => (node === 0 ? sign : `${sign}${node}`);
		const branches: Branch[] = [];
		for (let node = 1; node <= nodes; node += 1) {
			const parent = (seeds[node] as number) % node;
			branches.push({ from: rail('+', parent), to: rail('+', node), ohm: ohm(node) });
			branches.push({ from: rail('-', parent), to: rail('-', node), ohm: ohm(node + 30) });
		}
		for (let loop = 0; loop < loops && nodes > 1; loop += 1) {
			const a = 1 + ((seeds[30 + loop] as number) % nodes);
			const b = 1 + ((seeds[40 + loop] as number) % nodes);
			if (a !== b) branches.push({ from: rail('+', a), to: rail('+', b), ohm: ohm(60 + loop) });
		}
		const loads = Array.from({ length: nodes }, (_, index) => {
			const amount = watts[index] as number;
			const between = { from: rail('+', index + 1), to: rail('-', index + 1) };
			return index % 2 === 0
				? { ...between, powerW: Math.abs(amount) }
				: { ...between, currentA: amount / 12 };
		});
		return { fixedV: supply, branches, loads };
	});

describe('Kirchhoff', () => {
	test('what flows into a node flows out of it; what the source gives is used or lost', () => {
		let compared = 0;
		fc.assert(
			fc.property(networks, (network) => {
				const solution = solveNetwork(network);
				// A network may be asked for more than it can carry.
				if ('reason' in solution) return expect(solution.reason).toBe('collapse');
				compared += 1;
				const sum = new Map<string, number>();
				const size = new Map<string, number>();
				const put = (node: string, currentA: number) => {
					sum.set(node, (sum.get(node) ?? 0) + currentA);
					size.set(node, (size.get(node) ?? 0) + Math.abs(currentA));
				};
				for (const [index, { from, to }] of network.branches.entries()) {
					put(from, -(solution.branchA[index] as number));
					put(to, solution.branchA[index] as number);
				}
				for (const [index, { from, to }] of network.loads.entries()) {
					put(from, -(solution.loadA[index] as number));
					put(to, solution.loadA[index] as number);
				}
				for (const [node, left] of sum) {
					if (node === '+' || node === '-') continue;
					// A dead end carries the dust of the currents beside it.
					const dust = 1e-11 * Math.max(1, size.get('+') ?? 0, size.get('-') ?? 0);
					expect(Math.abs(left), node).toBeLessThanOrEqual(1e-9 * (size.get(node) as number) + dust);
				}
				const { sourceW, loadW, lossW } = solution;
				const turnover = network.loads.reduce(
					(total, _, index) =>
						total + Math.abs((solution.loadV[index] as number) * (solution.loadA[index] as number)),
					lossW,
				);
				expect(Math.abs(sourceW - loadW - lossW)).toBeLessThanOrEqual(1e-9 * turnover + 1e-12);
			}),
			{ numRuns: 1500 },
		);
		expect(compared).toBeGreaterThan(1000);
	});

	test('around every loop the voltages add up: a branch carries what its ends differ by', () => {
		fc.assert(
			fc.property(networks, (network) => {
				const solution = solveNetwork(network);
				if ('reason' in solution) return;
				for (const [index, { from, to, ohm }] of network.branches.entries()) {
					const across = (solution.voltageV.get(from) as number) - (solution.voltageV.get(to) as number);
					expect(Math.abs(across - (solution.branchA[index] as number) * ohm)).toBeLessThanOrEqual(
						1e-12 * 12 + 1e-9 * Math.abs(across),
					);
				}
				for (const [index, load] of network.loads.entries()) {
					if (load.powerW === undefined) continue;
					const power = (solution.loadV[index] as number) * (solution.loadA[index] as number);
					expect(Math.abs(power - load.powerW)).toBeLessThanOrEqual(1e-9 * load.powerW);
				}
			}),
			{ numRuns: 300 },
		);
	});

	test('in a tree each branch carries the loads behind it', () => {
		const { branchA } = solved({
			fixedV: supply,
			branches: [
				{ from: '+', to: 'a', ohm: 0.001 },
				{ from: 'a', to: 'b', ohm: 0.02 },
				{ from: 'a', to: 'c', ohm: 0.03 },
				{ from: 'c', to: 'd', ohm: 0.04 },
			],
			loads: [
				{ from: 'b', to: '-', currentA: 3 },
				{ from: 'c', to: '-', currentA: 4 },
				{ from: 'd', to: '-', currentA: 5 },
			],
		});
		for (const [index, currentA] of [12, 3, 9, 5].entries()) expect(branchA[index]).toBeCloseTo(currentA, 9);
	});
});

describe('constant power', () => {
	test('by the quadratic: V² − U V + P R = 0', () => {
		const { loadV, loadA, rounds } = solved({
			fixedV: supply,
			branches: [{ from: '+', to: 'x', ohm: 0.1 }],
			loads: [{ from: 'x', to: '-', powerW: 200 }],
		});
		const volts = (12 + Math.sqrt(144 - 4 * 200 * 0.1)) / 2;
		expect(loadV[0]).toBeCloseTo(volts, 10);
		expect(loadA[0]).toBeCloseTo(200 / volts, 10);
		expect(rounds).toBeGreaterThan(3);
	});

	test('up to the largest power a line can carry, U² / 4R, and no further', () => {
		const at = (powerW: number) =>
			solveNetwork({
				fixedV: supply,
				branches: [{ from: '+', to: 'x', ohm: 0.1 }],
				loads: [{ from: 'x', to: '-', powerW }],
			});
		expect('loadV' in at(359)).toBe(true);
		expect(at(361)).toEqual({ reason: 'collapse' });
		expect(at(5000)).toEqual({ reason: 'collapse' });
	});

	test('current and power together, and feeding back', () => {
		const both = solved({
			fixedV: supply,
			branches: [{ from: '+', to: 'x', ohm: 0.1 }],
			loads: [
				{ from: 'x', to: '-', currentA: 10, powerW: 24 },
				{ from: 'x', to: '-', currentA: -15 },
			],
		});
		expect((both.loadA[0] as number) - 10).toBeCloseTo(24 / (both.loadV[0] as number), 10);
		expect(both.loadV[0]).toBeGreaterThan(12);
	});
});

describe('what has no solution', () => {
	test('a load without a way to the source, or without a way back', () => {
		expect(
			solveNetwork({ fixedV: supply, branches: [], loads: [{ from: 'x', to: '-', currentA: 1 }] }),
		).toEqual({ reason: 'floating', nodes: ['x'] });
		expect(
			solveNetwork({
				fixedV: supply,
				branches: [
					{ from: '+', to: 'x', ohm: 1 },
					{ from: 'y', to: 'z', ohm: 1 },
				],
				loads: [{ from: 'x', to: 'y', currentA: 1 }],
			}),
		).toEqual({ reason: 'floating', nodes: ['y', 'z'] });
	});

	test.each([0, -1, Number.NaN])('a resistance of %d ohm is a programming error', (ohm) => {
		expect(() =>
			solveNetwork({ fixedV: supply, branches: [{ from: '+', to: 'x', ohm }], loads: [] }),
		).toThrow(RangeError);
	});

	test('nothing but the source itself is no trouble', () => {
		const nothing = solved({ fixedV: supply, branches: [{ from: '+', to: '-', ohm: 6 }], loads: [] });
		expect(nothing).toMatchObject({ branchA: [2], sourceW: 24, lossW: 24, loadW: 0 });
	});
});

test('a mesh of two hundred nodes with two hundred loads of constant power: what the source gives is load and loss', () => {
	const branches: Branch[] = [];
	const loads = [];
	for (let node = 1; node <= 200; node += 1) {
		const parent = node <= 8 ? '' : String(Math.floor((node - 1) / 3));
		branches.push({ from: `+${parent}`, to: `+${node}`, ohm: 0.001 + (node % 7) * 0.0003 });
		if (node % 20 === 0) branches.push({ from: `+${node}`, to: `+${node - 1}`, ohm: 0.001 });
		loads.push({ from: `+${node}`, to: '-', powerW: 3 });
	}
	const network = { fixedV: supply, branches, loads };
	const { sourceW, lossW, loadW } = solved(network);
	expect(loadW).toBeCloseTo(200 * 3, 6);
	expect(sourceW).toBeCloseTo(lossW + loadW, 6);
	expect(lossW).toBeGreaterThan(0);
});

test('the rise foretold for a thicker branch is what a new solution gives, in a tree of fixed currents', () => {
	const network: Network = {
		fixedV: supply,
		branches: [
			{ from: '+', to: 'a', ohm: 0.01 },
			{ from: 'a', to: 'b', ohm: 0.05 },
			{ from: 'a', to: 'c', ohm: 0.03 },
		],
		loads: [
			{ from: 'b', to: '-', currentA: 6 },
			{ from: 'c', to: '-', currentA: 4 },
		],
	};
	const before = solved(network);
	const sets = [[{ branch: 0, ohm: 0.006 }], [{ branch: 1, ohm: 0.03 }], [{ branch: 2, ohm: 0.01 }]];
	const rises = risesOf(network, before, 0, sets);
	for (const [index, [change]] of sets.entries()) {
		const branches = network.branches.map((branch, at) =>
			at === change?.branch ? { ...branch, ohm: change.ohm } : branch,
		);
		const after = solved({ ...network, branches });
		expect(rises[index]).toBeCloseTo((after.loadV[0] as number) - (before.loadV[0] as number), 10);
	}
});
