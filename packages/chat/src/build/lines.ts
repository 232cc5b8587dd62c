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
export function vanLines(van: Van, context: Context): string[] {
	const absent = van.absent.map((kind) => equipmentOf(kind).label);
	return [
		...van.pieces.map((piece) => pieceLine(piece, context)),
		...(absent.length === 0 ? [] : [`Said not to be there: ${absent.join(', ')}`]),
	];
}

/** "1 piece", "3 pieces". */
export function counted(count: number, one: string, several = `${one}s`): string {
	return `${count} ${count === 1 ? one : several}`;
}
