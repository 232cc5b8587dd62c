import { create, lusolveDependencies } from '../mathjs.js';

// Only the linear solver: mathjs whole takes most of a second to load.
const math = create(lusolveDependencies ?? {});

/** A resistance between two nodes, with a voltage source in it where there is one. */
export interface Branch {
	readonly from: string;
	readonly to: string;
	/** above zero [ohm] */
	readonly ohm: number;
	/** source in the branch that drives current from `from` to `to` [V] */
	readonly emfV?: number;
}

/** Draws a fixed current, or a fixed power at whatever voltage it gets; negative where it feeds the network. */
export interface NodeLoad {
	readonly from: string;
	readonly to: string;
	readonly currentA?: number;
	readonly powerW?: number;
}

export interface Network {
	/** nodes held at a voltage: the poles of the source [V] */
	readonly fixedV: Readonly<Record<string, number>>;
	readonly branches: readonly Branch[];
	readonly loads: readonly NodeLoad[];
}

export interface SolvedNetwork {
	/** by node [V] */
	readonly voltageV: ReadonlyMap<string, number>;
	/** by branch, from `from` to `to` [A] */
	readonly branchA: readonly number[];
	/** by load, between its nodes [V] */
	readonly loadV: readonly number[];
	/** by load [A] */
	readonly loadA: readonly number[];
	/** what the held nodes and the sources in branches deliver [W] */
	readonly sourceW: number;
	readonly lossW: number;
	readonly loadW: number;
	/** rounds until the constant-power loads agreed with their voltages */
	readonly rounds: number;
}

/** Why a network has no solution. */
export type Unsolvable =
	/** nothing holds these nodes at a voltage: no way to the source, or no way back */
	| { readonly reason: 'floating'; readonly nodes: readonly string[] }
	/** the loads want more power than the network can carry to them */
	| { readonly reason: 'collapse' };

const mostRounds = 2000;
const agreement = 1e-12;

/**
 * Node voltages and branch currents with all loads on, by nodal analysis (Kirchhoff's current law at every node).
 *
 * The unknowns are the differences to the source's pole, so that the small drop of a thick cable keeps its figures.
 * Constant-power loads are repeated with the voltages found until current and voltage agree; starting from no load
 * the voltages only fall, so the upper, stable solution is found where there is one.
 *
 * @throws RangeError where a resistance is not above zero
 */
export function solveNetwork(network: Network): SolvedNetwork | Unsolvable {
	const analysis = new Analysis(network);
	return analysis.floating.length > 0
		? { reason: 'floating', nodes: analysis.floating }
		: (analysis.solve() ?? { reason: 'collapse' });
}

/** How much the voltage of one load rises when a branch gets a lower resistance. */
export interface Change {
	readonly branch: number;
	readonly ohm: number;
}

/**
 * Rise of one load's voltage for each set of changed branches [V], with the currents of all loads held: exact for a
 * single change in a tree, a good guide otherwise.
 */
export function risesOf(
	network: Network,
	solved: SolvedNetwork,
	load: number,
	sets: readonly (readonly Change[])[],
): number[] {
	const analysis = new Analysis(network);
	const influence = analysis.influenceOn(load);
	return sets.map((changes) =>
		changes.reduce((sum, { branch: index, ohm }) => {
			const branch = network.branches[index] as Branch;
			const across = (solved.branchA[index] as number) * branch.ohm;
			const influenced = influence(branch.from) - influence(branch.to);
			return sum - (across * influenced * (branch.ohm - ohm)) / branch.ohm ** 2;
		}, 0),
	);
}

class Analysis {
	readonly floating: readonly string[];
	readonly #network: Network;
	/** voltage that a node's figures are taken from [V] */
	readonly #baseV = new Map<string, number>();
	/** row of the equations, by node that is not held */
	readonly #row = new Map<string, number>();
	readonly #entries: Map<number, number>[] = [];
	readonly #fixedCurrentA: number[] = [];
	readonly #once: (right: readonly number[]) => number[];

	constructor(network: Network) {
		this.#network = network;
		for (const branch of network.branches) {
			if (!(branch.ohm > 0)) throw new RangeError(`${branch.from} to ${branch.to}: ${branch.ohm} ohm`);
		}
		this.floating = this.#spreadBases();
		this.#writeEquations();
		this.#once = this.floating.length > 0 ? () => [] : this.#factorize();
	}

	/** Every node takes the voltage of a held node that branches lead to. @returns nodes that no held node reaches */
	#spreadBases(): string[] {
		const { branches, fixedV, loads } = this.#network;
		const neighbours = new Map<string, string[]>();
		const link = (a: string, b: string) => {
			const known = neighbours.get(a);
			if (known === undefined) neighbours.set(a, [b]);
			else known.push(b);
		};
		for (const { from, to } of branches) {
			link(from, to);
			link(to, from);
		}
		for (const [start, volts] of Object.entries(fixedV)) {
			if (this.#baseV.has(start)) continue;
			const open = [start];
			while (open.length > 0) {
				const node = open.pop() as string;
				if (this.#baseV.has(node)) continue;
				this.#baseV.set(node, volts);
				open.push(...(neighbours.get(node) ?? []));
			}
		}
		const named = new Set([...neighbours.keys(), ...loads.flatMap(({ from, to }) => [from, to])]);
		return [...named].filter((node) => !this.#baseV.has(node));
	}

	#writeEquations(): void {
		const { branches, fixedV } = this.#network;
		for (const node of this.#baseV.keys()) {
			if (fixedV[node] !== undefined) continue;
			this.#row.set(node, this.#row.size);
			this.#entries.push(new Map());
			this.#fixedCurrentA.push(0);
		}
		const add = (row: number, column: number, value: number) => {
			const entries = this.#entries[row] as Map<number, number>;
			entries.set(column, (entries.get(column) ?? 0) + value);
		};
		for (const { from, to, ohm, emfV } of branches) {
			const siemens = 1 / ohm;
			for (const [here, there, sign] of [
				[from, to, -1],
				[to, from, 1],
			] as const) {
				const row = this.#row.get(here);
				if (row === undefined) continue;
				add(row, row, siemens);
				const column = this.#row.get(there);
				if (column !== undefined) add(row, column, -siemens);
				else this.#inject(row, siemens * this.#heldAboveBase(there, here));
				this.#inject(row, sign * siemens * (emfV ?? 0));
			}
		}
	}

	#inject(row: number, currentA: number): void {
		this.#fixedCurrentA[row] = (this.#fixedCurrentA[row] as number) + currentA;
	}

	/** A held node's voltage over the base of a node that it is joined to [V]. */
	#heldAboveBase(held: string, node: string): number {
		return (this.#network.fixedV[held] ?? 0) - (this.#baseV.get(node) ?? 0);
	}

	#factorize(): (right: readonly number[]) => number[] {
		const size = this.#entries.length;
		if (size === 0) return () => [];
		const matrix = math.matrix('sparse');
		matrix.resize([size, size]);
		for (const [row, entries] of this.#entries.entries()) {
			for (const [column, value] of entries) matrix.set([row, column], value);
		}
		// Ordering for a symmetric matrix; its diagonal is the largest of each column, so pivoting never leaves it.
		const factors = math.slu(matrix, 1, 1);
		return (right) =>
			(math.lusolve(factors, [...right]) as unknown as { toArray(): number[][] })
				.toArray()
				.map(([value]) => value as number);
	}

	/** Solved, and corrected once by what the first try leaves over. */
	#refined(right: readonly number[]): number[] {
		const first = this.#once(right);
		const left = right.map((value, row) => value - this.#rowTimes(row, first));
		return this.#once(left).map((correction, row) => (first[row] as number) + correction);
	}

	#rowTimes(row: number, values: readonly number[]): number {
		let sum = 0;
		for (const [column, entry] of this.#entries[row] as Map<number, number>) {
			sum += entry * (values[column] as number);
		}
		return sum;
	}

	/** Voltage of a node over its base [V]. */
	#above(node: string, values: readonly number[]): number {
		const row = this.#row.get(node);
		return row === undefined ? this.#heldAboveBase(node, node) : (values[row] as number);
	}

	#between(from: string, to: string, values: readonly number[]): number {
		const bases = (this.#baseV.get(from) ?? 0) - (this.#baseV.get(to) ?? 0);
		return bases + (this.#above(from, values) - this.#above(to, values));
	}

	#withLoads(loadA: readonly number[]): number[] {
		const right = [...this.#fixedCurrentA];
		for (const [index, { from, to }] of this.#network.loads.entries()) {
			const [out, back] = [this.#row.get(from), this.#row.get(to)];
			if (out !== undefined) right[out] = (right[out] as number) - (loadA[index] as number);
			if (back !== undefined) right[back] = (right[back] as number) + (loadA[index] as number);
		}
		return right;
	}

	solve(): SolvedNetwork | null {
		const { loads } = this.#network;
		let loadA = loads.map((load) => load.currentA ?? 0);
		let values = this.#once(this.#withLoads(loadA));
		let rounds = 0;
		for (;;) {
			const next = loads.map((load, index) =>
				load.powerW === undefined
					? (loadA[index] as number)
					: (load.currentA ?? 0) + load.powerW / this.#between(load.from, load.to, values),
			);
			// Below zero volts a load would feed the network: there is no working point.
			if (loads.some((load) => load.powerW !== undefined && this.#between(load.from, load.to, values) <= 0))
				return null;
			const settled = next.every(
				(value, index) => Math.abs(value - (loadA[index] as number)) <= agreement * Math.abs(value),
			);
			loadA = next;
			if (settled) break;
			rounds += 1;
			if (rounds > mostRounds) return null;
			values = this.#once(this.#withLoads(loadA));
		}
		return this.#result(this.#refined(this.#withLoads(loadA)), loadA, rounds);
	}

	#result(values: readonly number[], loadA: readonly number[], rounds: number): SolvedNetwork {
		const { branches, fixedV, loads } = this.#network;
		const branchA = branches.map(
			({ from, to, ohm, emfV }) => (this.#above(from, values) - this.#above(to, values) + (emfV ?? 0)) / ohm,
		);
		const loadV = loads.map(({ from, to }) => this.#between(from, to, values));
		let sourceW = 0;
		for (const [index, { from, to, emfV }] of branches.entries()) {
			const currentA = branchA[index] as number;
			sourceW += (fixedV[from] ?? 0) * currentA - (fixedV[to] ?? 0) * currentA + (emfV ?? 0) * currentA;
		}
		for (const [index, { from, to }] of loads.entries()) {
			sourceW += ((fixedV[from] ?? 0) - (fixedV[to] ?? 0)) * (loadA[index] as number);
		}
		return {
			voltageV: new Map(
				[...this.#baseV].map(([node, baseV]) => [node, baseV + this.#above(node, values)] as const),
			),
			branchA,
			loadV,
			loadA,
			sourceW,
			lossW: branches.reduce((sum, { ohm }, index) => sum + (branchA[index] as number) ** 2 * ohm, 0),
			loadW: loads.reduce((sum, _, index) => sum + (loadV[index] as number) * (loadA[index] as number), 0),
			rounds,
		};
	}

	/** How the voltage of a load follows a current put in at a node [ohm]. */
	influenceOn(load: number): (node: string) => number {
		const { from, to } = this.#network.loads[load] as NodeLoad;
		const right = new Array<number>(this.#entries.length).fill(0);
		const [out, back] = [this.#row.get(from), this.#row.get(to)];
		if (out !== undefined) right[out] = (right[out] as number) + 1;
		if (back !== undefined) right[back] = (right[back] as number) - 1;
		const values = this.#refined(right);
		return (node) => {
			const row = this.#row.get(node);
			return row === undefined ? 0 : (values[row] as number);
		};
	}
}
