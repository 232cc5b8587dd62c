export interface Position {
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
}

const earthRadiusKm = 6371;

/** Great-circle distance [km], by the haversine. */
export function distanceKm(a: Position, b: Position): number {
	const rad = Math.PI / 180;
	const half =
		Math.sin(((b.latitudeDeg - a.latitudeDeg) * rad) / 2) ** 2 +
		Math.cos(a.latitudeDeg * rad) *
			Math.cos(b.latitudeDeg * rad) *
			Math.sin(((b.longitudeDeg - a.longitudeDeg) * rad) / 2) ** 2;
	return 2 * earthRadiusKm * Math.asin(Math.min(1, Math.sqrt(half)));
}
