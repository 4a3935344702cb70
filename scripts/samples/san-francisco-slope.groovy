// An invented lot in San Francisco, California: outline from a map, yard falling 15 % to the east.
plan 'San Francisco slope', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'metric'
site 'San Francisco, California', latitude: 37.76.deg, longitude: -122.44.deg, elevation: 60.m, zone: 'America/Los_Angeles'
climate 'san-francisco-ca'
formerLawn 'cool season'

def yard = lotOutline(geoOutline(fileText('san-francisco-slope.geojson'), latitude: 37.76.deg, longitude: -122.44.deg)) {
  side 'west', role: 'front', setback: 3.m, rule: 'example only, verify locally'
  side 'south', role: 'side', setback: 0.m, rule: 'example only, verify locally'
  side 'north', role: 'side', setback: 0.m, rule: 'example only, verify locally'
  side 'east', role: 'rear', setback: 4.5.m, rule: 'example only, verify locally'
}

def ground = levels(contours: 0.5.m) {
  level point(0.m, 0.m), 59.65.m
  level point(0.m, 9.3.m), 59.7.m
  level point(5.m, 1.6.m), 60.m
  level point(5.m, 9.1.m), 60.m
  level point(13.m, 0.m), 59.9.m
  level point(13.m, 1.6.m), 60.m
  level point(13.m, 9.35.m), 60.m
  level point(30.5.m, 0.1.m), 57.35.m
  level point(30.4.m, 9.4.m), 57.4.m
}

building 'house', rect(5.m, 1.6.m, 8.m, 7.5.m), eaves: 6.m, roof: 'flat'
building 'north neighbour', rect(4.m, 9.6.m, 9.m, 6.m), eaves: 6.m, roof: 'flat', neighbour: true
fence 'rear fence', line([point(13.m, 9.1.m), point(30.2.m, 9.2.m), point(30.3.m, 0.3.m)]), height: 1.8.m, openness: 0.2
tap 'garden tap', point(13.1.m, 2.m), source: 'mains'
utility 'gas line', line([point(0.m, 8.3.m), point(5.m, 8.3.m)]), carries: 'gas', clearance: 600.mm
paving 'forecourt', rect(0.2.m, 0.3.m, 4.7.m, 6.5.m), surface: 'permeable pavers'

sheetMulch { chips perennial: 75.mm, annual: 50.mm, path: 100.mm, ground: 100.mm, treeRing: 100.mm ; compost annual: 75.mm }
soilTexture 'sandy loam', organic: 2
lightScheme 'temperate'; shadeStage 'year 1'
dropZone 'forecourt', rect(0.3.m, 1.8.m, 4.5.m, 5.m), access: 3.m
work crew: 2, hoursPerDay: 6, slope: 0.15, start: '2026-10-05'

gate 'street gate', point(1.m, 0.9.m)
// All grass about the forecourt, beside and behind the house is turned over, but for the swale: no strip is left to mow on the slope.
mulchedGround 'turned grass', (rect(5.m, -1.m, 27.m, 12.m) + rect(-1.m, -1.m, 6.m, 7.8.m)) & yard.shape
path 'side path', line([point(4.9.m, 0.9.m), point(29.5.m, 0.9.m)]), width: 1.m, use: 'barrow'
path 'herb path', line([point(15.5.m, 0.9.m), point(15.5.m, 8.4.m)]), width: 800.mm, use: 'barrow'
path 'fence path', line([point(13.9.m, 8.72.m), point(29.5.m, 8.72.m)]), width: 640.mm
swale 'upper swale', ground.contour(59.25.m).part(1.8.m, 8.4.m), bottom: 400.mm, depth: 200.mm, sides: 3

bed('herb bed', rect(13.9.m, 1.4.m, 1.2.m, 7.m), use: 'perennial') {
  drip emitter: 2.lph, spacing: 30.cm, rowSpacing: 40.cm
  plant 'thyme', share: 0.25
  plant 'sage', share: 0.35
  plant 'rosemary', share: 0.4
}
beds('terrace', rect(19.8.m, 1.4.m, 5.8.m, 7.m), width: 1.2.m, gap: 1.1.m, bearing: 0.deg, paths: 'foot', use: 'perennial') {
  drip emitter: 2.lph, spacing: 30.cm, rowSpacing: 40.cm
  plant 'garden strawberry', layout: 'staggered'
}
for (i in 0..1) {
  tree("apple ${i + 1}", point(28.m, 3.m + 4.m * i), crown: 2.5.m, height: 2.5.m, leaf: 'deciduous', standing: false) {
    species 'apple (dwarf)'
    variety(['Anna', 'Dorsett Golden'][i], blooms: 'early')
    mulchRing 1.m
    drip emitter: 2.lph, spacing: 30.cm, rowSpacing: 40.cm
  }
}
