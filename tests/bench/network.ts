import { type Network, solveNetwork } from '@lugbook/core';
import { type Bench, leastMs } from './bench.js';

/** A trunk of plus and minus nodes with a load at each pair: as many nodes as asked for. */
function ladder(nodes: number): Network {
	const pairs = nodes / 2 - 1;
	const rungs = Array.from({ length: pairs }, (_, index) => index + 1);
	return {
		fixedV: { p0: 13, m0: 0 },
		branches: rungs.flatMap((rung) => [
			{ from: `p${rung - 1}`, to: `p${rung}`, ohm: 0.0002 },
			{ from: `m${rung - 1}`, to: `m${rung}`, ohm: 0.0002 },
		]),
		loads: rungs.map((rung) => ({ from: `p${rung}`, to: `m${rung}`, powerW: 3 })),
	};
}

export const benches: readonly Bench[] = [
	{
		name: 'network of 200 nodes with 99 constant-power loads solved',
		target: 'under 20 ms',
		run: async () => {
			const network = ladder(200);
			const solved = solveNetwork(network);
			if (!('loadV' in solved)) throw new Error(`not solved: ${solved.reason}`);
			return `${(await leastMs(() => solveNetwork(network))).toFixed(1)} ms, ${solved.rounds} rounds, last load at ${solved.loadV.at(-1)?.toFixed(2)} V`;
		},
	},
];
