/**
 * National parks and other places that are no towns but where vans are parked: where their usual camps or entrances
 * lie, to a tenth of a degree. Geography written down from memory: it only picks the nearest climate station, and
 * the answer names that station and how far off it is.
 */
export interface Landmark {
	/** the name shown */
	readonly name: string;
	/** other ways to say it */
	readonly also: readonly string[];
	readonly country: string;
	readonly state: string | null;
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
}

function park(
	name: string,
	state: string,
	latitudeDeg: number,
	longitudeDeg: number,
	...also: string[]
): Landmark {
	return {
		name: `${name} National Park`,
		also: [name, ...also],
		country: 'USA',
		state,
		latitudeDeg,
		longitudeDeg,
	};
}

function spot(
	name: string,
	country: string,
	state: string | null,
	latitudeDeg: number,
	longitudeDeg: number,
	...also: string[]
): Landmark {
	return { name, also, country, state, latitudeDeg, longitudeDeg };
}

export const landmarks: readonly Landmark[] = [
	park('Acadia', 'ME', 44.3, -68.2),
	park('Arches', 'UT', 38.7, -109.6),
	park('Badlands', 'SD', 43.8, -101.9),
	park('Big Bend', 'TX', 29.3, -103.2),
	park('Biscayne', 'FL', 25.5, -80.3),
	park('Black Canyon of the Gunnison', 'CO', 38.6, -107.7, 'Black Canyon'),
	park('Bryce Canyon', 'UT', 37.6, -112.2, 'Bryce'),
	park('Canyonlands', 'UT', 38.4, -109.8),
	park('Capitol Reef', 'UT', 38.3, -111.3),
	park('Carlsbad Caverns', 'NM', 32.2, -104.4),
	park('Congaree', 'SC', 33.8, -80.8),
	park('Crater Lake', 'OR', 42.9, -122.1),
	park('Cuyahoga Valley', 'OH', 41.2, -81.6),
	park('Death Valley', 'CA', 36.5, -116.9, 'Furnace Creek'),
	park('Denali', 'AK', 63.7, -148.9),
	park('Dry Tortugas', 'FL', 24.6, -82.9),
	park('Everglades', 'FL', 25.4, -80.6),
	park('Glacier', 'MT', 48.5, -114.0),
	park('Glacier Bay', 'AK', 58.5, -135.9),
	park('Grand Canyon', 'AZ', 36.1, -112.1),
	park('Grand Teton', 'WY', 43.7, -110.7, 'Tetons', 'the Tetons', 'Grand Tetons'),
	park('Great Basin', 'NV', 39.0, -114.2),
	park('Great Sand Dunes', 'CO', 37.7, -105.5),
	park('Great Smoky Mountains', 'TN', 35.6, -83.5, 'Great Smokies', 'Smoky Mountains', 'Smokies'),
	park('Guadalupe Mountains', 'TX', 31.9, -104.8),
	park('Haleakala', 'HI', 20.7, -156.2),
	park('Hawaii Volcanoes', 'HI', 19.4, -155.3),
	park('Hot Springs', 'AR', 34.5, -93.1),
	park('Indiana Dunes', 'IN', 41.7, -87.1),
	park('Isle Royale', 'MI', 48.0, -88.8),
	park('Joshua Tree', 'CA', 33.9, -116.2),
	park('Katmai', 'AK', 58.6, -155.8),
	park('Kenai Fjords', 'AK', 60.1, -149.4),
	park('Kings Canyon', 'CA', 36.8, -118.8),
	park('Lassen Volcanic', 'CA', 40.4, -121.5, 'Lassen'),
	park('Mammoth Cave', 'KY', 37.2, -86.1),
	park('Mesa Verde', 'CO', 37.2, -108.5),
	park('Mount Rainier', 'WA', 46.8, -121.7, 'Rainier'),
	park('New River Gorge', 'WV', 38.1, -81.1),
	park('North Cascades', 'WA', 48.7, -121.1),
	park('Olympic', 'WA', 47.9, -123.9),
	park('Petrified Forest', 'AZ', 35.0, -109.8),
	park('Pinnacles', 'CA', 36.5, -121.2),
	park('Redwood', 'CA', 41.3, -124.0, 'Redwoods'),
	park('Rocky Mountain', 'CO', 40.4, -105.6, 'Rocky Mountain NP'),
	park('Saguaro', 'AZ', 32.2, -110.7),
	park('Sequoia', 'CA', 36.6, -118.7),
	park('Shenandoah', 'VA', 38.5, -78.4),
	park('Theodore Roosevelt', 'ND', 46.9, -103.5),
	park('Voyageurs', 'MN', 48.5, -92.9),
	park('White Sands', 'NM', 32.8, -106.2),
	park('Wind Cave', 'SD', 43.6, -103.5),
	park('Wrangell-St Elias', 'AK', 61.7, -143.5),
	park('Yellowstone', 'WY', 44.6, -110.5),
	park('Yosemite', 'CA', 37.7, -119.6),
	park('Zion', 'UT', 37.2, -113.0),
	spot('Washington, DC', 'USA', 'DC', 38.9, -77.0, 'Washington DC', 'Washington D C'),
	spot('New York City', 'USA', 'NY', 40.8, -74.0, 'New York', 'NYC', 'Manhattan'),
	spot('Los Angeles', 'USA', 'CA', 34.0, -118.3, 'L A'),
	spot('Las Vegas', 'USA', 'NV', 36.2, -115.1, 'Vegas'),
	spot('Salt Lake City', 'USA', 'UT', 40.8, -111.9, 'SLC', 'Salt Lake'),
	spot('Lake Tahoe', 'USA', 'CA', 39.0, -120.0, 'Tahoe'),
	spot('Lake Havasu', 'USA', 'AZ', 34.5, -114.3),
	spot('Lake Powell', 'USA', 'AZ', 36.9, -111.5, 'Glen Canyon'),
	spot('Lake Mead', 'USA', 'NV', 36.0, -114.8),
	spot('Monument Valley', 'USA', 'UT', 37.0, -110.1),
	spot('Big Sur', 'USA', 'CA', 36.3, -121.8),
	spot('Slab City', 'USA', 'CA', 33.3, -115.5),
	spot('Mojave Desert', 'USA', 'CA', 35.1, -115.5, 'Mojave'),
	spot('Anza-Borrego Desert', 'USA', 'CA', 33.2, -116.4, 'Anza-Borrego', 'Borrego Springs'),
	spot('Alabama Hills', 'USA', 'CA', 36.6, -118.1, 'Lone Pine'),
	spot('Black Rock Desert', 'USA', 'NV', 40.8, -119.2, 'Gerlach'),
	spot('Grand Staircase', 'USA', 'UT', 37.6, -111.7, 'Escalante'),
	spot('Springdale', 'USA', 'UT', 37.2, -113.0),
	spot('Bluff', 'USA', 'UT', 37.3, -109.6),
	spot('Black Hills', 'USA', 'SD', 43.9, -103.6),
	spot('Columbia River Gorge', 'USA', 'OR', 45.7, -121.5, 'Columbia Gorge'),
	spot('Outer Banks', 'USA', 'NC', 35.6, -75.5),
	spot('Florida Keys', 'USA', 'FL', 24.7, -81.1, 'the Keys'),
	spot('Cape Cod', 'USA', 'MA', 41.7, -70.3),
	spot('Adirondacks', 'USA', 'NY', 44.1, -74.0),
	spot('White Mountains', 'USA', 'NH', 44.2, -71.3),
	spot('Boundary Waters', 'USA', 'MN', 47.9, -91.5),
	spot('Terlingua', 'USA', 'TX', 29.3, -103.6),
	spot('Padre Island', 'USA', 'TX', 27.4, -97.3),
	spot('Baja California', 'MEX', null, 28.0, -113.5, 'Baja'),
	spot('Banff', 'CAN', 'AB', 51.2, -115.6, 'Banff National Park'),
	spot('Jasper', 'CAN', 'AB', 52.9, -118.1, 'Jasper National Park'),
	spot('Whistler', 'CAN', 'BC', 50.1, -123.0),
	spot('Lake Garda', 'ITA', null, 45.6, 10.7, 'Lago di Garda', 'Gardasee'),
	spot('Lake Constance', 'DEU', null, 47.6, 9.4, 'Bodensee'),
	spot('North Cape', 'NOR', null, 71.2, 25.8, 'Nordkapp', 'Nordkap'),
	spot('Lofoten', 'NOR', null, 68.2, 14.0),
	spot('Isle of Skye', 'GBR', 'Scotland', 57.3, -6.2, 'Skye'),
	spot('Scottish Highlands', 'GBR', 'Scotland', 57.1, -4.7, 'the Highlands'),
	spot('Lake District', 'GBR', 'England', 54.5, -3.1),
	spot('Cornwall', 'GBR', 'England', 50.3, -5.1),
	spot('Snowdonia', 'GBR', 'Wales', 53.1, -3.9, 'Eryri'),
	spot('Algarve', 'PRT', null, 37.1, -8.3),
	spot('Fjordland', 'NZL', null, -45.4, 167.7, 'Fiordland', 'Milford Sound'),
	spot('Uluru', 'AUS', 'NT', -25.3, 131.0),
	spot('Nullarbor', 'AUS', 'SA', -31.5, 130.0),
];
