// An invented yard in Phoenix, Arizona, that falls 2 % to the north: swales hold the storms, fruit trees stand in deep mulch.
plan 'Desert basins', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'us'
site 'Phoenix, Arizona', latitude: 33.43.deg, longitude: -112.0.deg, elevation: 1110.ft, zone: 'America/Phoenix'
climateNormals 'Phoenix Sky Harbor', units: 'inch fahrenheit',
  rain: [0.9, 0.9, 0.8, 0.2, 0.1, 0, 0.9, 0.9, 0.6, 0.6, 0.6, 0.7],
  max: [68, 71, 78, 86, 95, 104, 107, 105, 100, 89, 77, 66],
  min: [46, 49, 55, 61, 70, 79, 85, 84, 78, 66, 54, 45],
  source: 'NOAA normals 1991-2020 of Phoenix Sky Harbor, rounded; secondary, from the climate chart of an encyclopedia'
frost last: '02-07', first: '12-12', source: 'mean dates at the airport, secondary, from a page on the local climate'
hardinessZone '9b', source: 'demo figure, look it up on the zone map'
winterChill 300, source: 'demo figure, ask the extension office'
effectiveRain 'usbr'
cloudburst 3.inch, source: 'demo figure, ask the flood control district'
soil sand: 55, clay: 15, organic: 0.8, depth: 36.inch
groundFall 1.2.ft, per: 60.ft, towards: 0.deg

def yard = lot([point(0.ft, 0.ft), point(64.ft, 0.ft), point(64.ft, 104.ft), point(0.ft, 100.ft)]) {
  side 'south', role: 'front', setback: 20.ft, rule: 'example only, verify locally'
  for (s in ['east', 'west']) side s, role: 'side', setback: 5.ft, rule: 'example only, verify locally'
  side 'north', role: 'rear', setback: 3.ft, rule: 'example only, verify locally'
}
building 'house', rect(15.ft, 24.ft, 36.ft, 28.ft), eaves: 11.ft, roof: 'flat'
structure 'ramada', rect(52.ft, 40.ft, 7.ft, 12.ft), height: 9.ft
paving 'patio', rect(26.ft, 52.ft, 18.ft, 6.ft), surface: 'permeable pavers'
paving 'drive', rect(0.ft, 0.ft, 12.ft, 44.ft), surface: 'concrete'
hedge 'jojoba', line([point(63.ft, 57.ft), point(63.ft, 102.ft)]), height: 6.ft, width: 2.ft
tree('mesquite', point(56.ft, 12.ft), crown: 20.ft, height: 22.ft, trunk: 14.inch, standing: true, leaf: 'deciduous') { species 'velvet mesquite' }
tap 'patio tap', point(24.ft, 52.7.ft), source: 'mains'
supply flow: 5.gpm
roof 'north half', rect(15.ft, 38.ft, 36.ft, 14.ft), surface: 'flat smooth'
rainGarden 'north half', slope: 2, storm: 0.5.inch
// Storms of two seasons fill a cistern for the herbs; what it lets go runs into the upper swale.
downspout point(19.ft, 52.ft), roof: 'north half', inside: 3.inch
tank('cistern', point(19.ft, 54.8.ft), roof: 'north half') { round diameter: 3.ft, height: 4.ft ; stand 12.inch ; serves(['basin 1', 'basin 2']) }
overflow(line([point(19.ft, 56.8.ft), point(19.ft, 66.ft)]), from: 'cistern', inside: 3.inch)
gate 'drive', point(8.ft, 44.ft)
dropZone 'drive', rect(1.ft, 20.ft, 10.ft, 22.ft), access: 10.ft
shadeStage 'mature'; sunPath point(32.ft, 70.ft)
work crew: 3, hoursPerDay: 6, start: '2026-10-05'

// Bare desert ground has no sod to smother: chips alone, deep, over all of it but the swales.
sheetMulch { chipsOnly() ; chips perennial: 3.inch, path: 3.inch, ground: 6.inch, treeRing: 4.inch ; compost perennial: 0.inch }
for (y in [66, 85]) swale "swale ${y}", line([point(8.ft, y * 1.ft), point(58.ft, y * 1.ft)]), bottom: 2.ft, depth: 8.inch, sides: 3
mulchedGround 'deep mulch', rect(-1.ft, 58.ft, 70.ft, 60.ft) & yard.shape
path 'west path', line([point(2.ft, 44.ft), point(2.ft, 98.ft)]), width: 4.ft, use: 'barrow'
path 'basin path', line([point(4.ft, 89.6.ft), point(62.ft, 89.6.ft)]), width: 3.ft, use: 'barrow'
def fruit = ['sweet orange', 'fig', 'sweet orange', 'pomegranate', 'pomegranate', 'pomegranate']
for (i in 0..5) {
  def at = i < 3 ? point(16.ft + 18.ft * i, 75.5.ft) : point(14.ft + 20.ft * (i - 3), 94.ft)
  tree("${fruit[i]} ${i + 1}", at, crown: 12.ft, height: 12.ft, leaf: fruit[i] == 'sweet orange' ? 'evergreen' : 'deciduous', standing: false) {
    species fruit[i]
    mulchRing 5.ft
    drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 24.inch
  }
}
for (i in 0..1) {
  bed("basin ${i + 1}", rect(21.ft + 20.ft * i, 91.1.ft, 6.ft, 4.ft), use: 'perennial') {
    drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 16.inch
    plant i == 0 ? 'sage' : 'rosemary'
  }
}
