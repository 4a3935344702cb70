// A regional file: its region first, then soils, rates, rules and checks with their sources. All of it is invented.
region 'River Flats', about: 'An invented region of deep loams by a river.',
  source: publication('Soils of River Flats', by: 'invented', seen: 'memory')
localSoil 'flat loam', sand: 40, clay: 18, organic: 3,
  source: publication('Soils of River Flats', by: 'invented', where: 'table 1', seen: 'memory')
localLabour 'cut edge', likely: 0.04, low: 0.02, high: 0.07, unit: 'ft',
  source: publication('Edges in loam', by: 'invented crew', seen: 'memory')
localRule 'floods', 'Ask the county which flood line holds before placing beds and sheds.',
  source: publication('Flood lines', by: 'invented county', seen: 'memory')
