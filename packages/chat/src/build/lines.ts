import { type Context, equipmentOf, labelOf, type Piece, showValue, type Van } from '@lugbook/core';

/** A piece as understood: "fridge: power 60 W, 24 h". */
function pieceLine(piece: Piece, context: Context): string {
	const { fields } = equipmentOf(piece.kind);
	const values = Object.entries(piece.values).flatMap(([name, value]) => {
		const field = fields[name];
		return field === undefined || name === 'name'
			? []
			: [`${field.meta.label} ${showValue(field, value, context)}`];
	});
	return values.length === 0 ? labelOf(piece) : `${labelOf(piece)}: ${values.join(', ')}`;
}

/** The equipment of a van, a line a piece, then what was said not to be there. */
export function vanLines({ pieces, absent }: Van, context: Context): string[] {
	return [...pieces.map((piece) => pieceLine(piece, context)), ...absentLines(absent)];
}

/** What of a van is no longer as it was. */
export function changedLines(before: Van, now: Van, context: Context): string[] {
	const changed = now.pieces.filter((piece) => !before.pieces.includes(piece));
	const ids = new Set(now.pieces.map(({ id }) => id));
	const gone = before.pieces.filter(({ id }) => !ids.has(id)).map(labelOf);
	return [
		...changed.map((piece) => pieceLine(piece, context)),
		...(gone.length === 0 ? [] : [`Taken out: ${gone.join(', ')}`]),
		...absentLines(now.absent.filter((kind) => !before.absent.includes(kind))),
	];
}

function absentLines(absent: readonly string[]): string[] {
	const labels = absent.map((kind) => equipmentOf(kind).label);
	return labels.length === 0 ? [] : [`Said not to be there: ${labels.join(', ')}`];
}

/** "1 piece", "3 pieces". */
export function counted(count: number, one: string, several = `${one}s`): string {
	return `${count} ${count === 1 ? one : several}`;
}
