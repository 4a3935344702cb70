// A regional file: soils, rates, codes to check and checks for one soil region. The region's name is invented,
// its soils are real: the prairie soils of east central Illinois. A plan takes it with
//   include 'regional/tallgrass-flats'
// `seen: 'read'` was read where it says; `seen: 'memory'` was recalled and is to be verified before it is relied on.
region 'Tallgrass Flats', about: 'East central Illinois: dark prairie soils in silt over glacial till and outwash, association Sidell, Catlin, Flanagan, Drummer.',
  source: publication('Soils of Illinois, Bulletin 725', by: 'University of Illinois Agricultural Experiment Station', where: 'contents, soil association B', seen: 'read')

// Soils. Clay and sand are the middle of the published ranges of the surface layer (of Bryce, of the control section),
// intake is the low end of the conductivity. Organic matter is recalled: have it tested.
localSoil 'Drummer silty clay loam', sand: 7.5, clay: 27.5, organic: 5.5, intake: 0.6.inch,
  source: publication('Drummer series (poorly drained), organic matter recalled', by: 'National Cooperative Soil Survey', year: 2015, where: 'official series description, rev. 12/2015', seen: 'read')
localSoil 'Flanagan silt loam', sand: 5, clay: 26, organic: 4.5, intake: 0.2.inch,
  source: publication('Flanagan series (somewhat poorly drained), organic matter recalled', by: 'National Cooperative Soil Survey', year: 2015, where: 'official series description, rev. 06/2015', seen: 'read')
localSoil 'Catlin silt loam', sand: 4, clay: 25, organic: 4, intake: 0.6.inch,
  source: publication('Catlin series (moderately well drained), organic matter recalled', by: 'National Cooperative Soil Survey', year: 2013, where: 'official series description, rev. 07/2013', seen: 'read')
localSoil 'Bryce silty clay', sand: 10, clay: 46, organic: 5.5, intake: 0.06.inch,
  source: publication('Bryce series (poorly drained), organic matter recalled', by: 'National Cooperative Soil Survey', year: 2018, where: 'official series description, rev. 01/2018', seen: 'read')

// Rates.
localLabour 'cut edge', likely: 0.08, low: 0.04, high: 0.12, unit: 'ft',
  source: publication('Spading a bed edge in moist silty clay loam', by: 'recalled from practice', seen: 'memory')
localPrice 'wood-chip mulch', likely: 12, low: 0, high: 24, unit: 'yd3',
  source: publication('Price of chips, invented for demonstration; ask the yard-waste site', by: 'invented', seen: 'memory')

// Codes to check.
localRule 'digging', 'Illinois: call 811 (Chicago has its own centre) 3 to 10 working days before; private lines stay unmarked.',
  source: publication('Click before you dig', by: 'JULIE, the Illinois one-call centre', where: 'submit a request', seen: 'read')
localRule 'drain tile', 'Drummer soils are poorly drained and much of this land is drained by buried tile: ask the owner or the drainage district where it lies before digging or planting trees, and do not cut it.',
  source: publication('Proposed state soil: about Drummer silty clay loam', by: 'USDA-NRCS Illinois (drainage read; tile from memory)', where: 'state soil page', seen: 'memory')
localRule 'wells', 'Illinois well code: ask the county health department how far beds, manure and fuel keep from a well.',
  source: publication('Water well construction code, 77 Ill. Adm. Code 920', by: 'Illinois Department of Public Health', seen: 'memory')
localRule 'septic', 'Illinois private sewage code: ask the county health department before planting near a field; no food, trees or raised beds on it.',
  source: publication('Private sewage disposal code, 77 Ill. Adm. Code 905', by: 'Illinois Department of Public Health', seen: 'memory')

// Plants: what may not be planted, what spreads from gardens, what grew here before them.
localPlants 'prohibited', names: 'Lonicera japonica, Rosa multiflora, Lythrum salicaria, Rhamnus cathartica, Rhamnus frangula, Frangula alnus, Rhamnus arguta, Rhamnus davurica, Rhamnus japonica, Rhamnus utilis, Pueraria, Lonicera maackii, Lonicera tatarica, Lonicera morrowii, Lonicera fragrantissima, Elaeagnus umbellata, Elaeagnus pungens, Elaeagnus angustifolia, Tamarix, Conium maculatum, Heracleum mantegazzianum, Celastrus orbiculatus, Ficaria verna, Dipsacus, Fallopia japonica, Fallopia sachalinensis, Fallopia x bohemica',
  say: 'no one may buy, sell, hand out or plant it in Illinois without a permit',
  source: publication('Illinois Exotic Weed Act, 525 ILCS 10/3; from 2025 on the list stands in rules: look there too', by: 'State of Illinois', year: 2016, where: 'as amended by P.A. 99-81', seen: 'read')
localPlants 'watched', names: 'Pyrus calleryana, Hemerocallis fulva, Securigera varia', say: 'it has spread along roads and into woods',
  source: publication('Plants that spread from Illinois gardens', by: 'recalled from practice', seen: 'memory')
localPlants 'native', names: 'Asimina triloba, Corylus americana, Amelanchier, Echinacea purpurea, Asclepias tuberosa, Monarda, Helianthus tuberosus, Apios americana',
  source: publication('Plants of the prairies and woods of east central Illinois', by: 'recalled from practice', seen: 'memory')

// Checks of the region's own.
localCheck 'basins off walls', kind: 'bed', named: 'basin', nearer: 10.ft, to: 'building',
  say: 'Rain that soaks in near a wall can reach the basement.', advice: 'Keep the basin 10 ft from buildings with a basement, and lead its overflow away from them.',
  source: publication('Rain garden design', by: 'University of Connecticut, NEMO program', where: 'siting, point 2', seen: 'read')
localCheck 'basins on slow soil', kind: 'bed', named: 'basin', whenIntakeBelow: 0.25.inch,
  say: 'A basin on this soil holds water for days.', advice: 'Dig a test hole and time it. If it drains slower than 0.25 in an hour, plant a wet-ground bed without a basin.',
  source: publication('Rain garden guides: soil that takes in at least 0.25 in an hour', by: 'university extension services', seen: 'memory')
