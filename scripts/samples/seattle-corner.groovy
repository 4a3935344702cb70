// An invented corner lot in Seattle, Washington, taken from its deed; streets to the south and east.
plan 'Seattle corner', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'us'
site 'Seattle, Washington', latitude: 47.61.deg, longitude: -122.33.deg, elevation: 60.m, zone: 'America/Los_Angeles'
climate 'seattle-wa'
hardinessZone '9a', source: 'demo figure, look it up on the zone map'
// A wet year with a long dry summer, measured: NOAA's daily summaries are in the public domain.
dailyRain fileText('seattle-rain-2012.csv'), station: 'Seattle-Tacoma airport', source: 'NOAA daily summaries, as in vega-datasets'

// Setbacks by role, the sight rule and tree protection come from a file that another place replaces.
include 'regional/demo-street-code'
// The calls as copied from the deed; the curve gives more than it needs, and all of it agrees.
def parcel = deed('Lot 12, block 3', start: point(0.ft, 0.ft)) { calls fileText('seattle-corner-deed.csv') }
def yard = lotFrom(parcel) {
  side 'south', role: 'front'
  for (s in ['corner', 'east']) side s, role: 'corner side'
  side 'north', role: 'rear'
  side 'west', role: 'side'
  sightTriangle 'south', 'east'
}
easement 'power', rect(0.ft, 95.ft, 60.ft, 5.ft), holder: 'the power company'

building 'house', rect(8.ft, 24.ft, 28.ft, 30.ft), eaves: 11.ft, ridge: 20.ft, overhang: 1.5.ft, roof: 'hip'
building 'west neighbor', rect(-34.ft, 26.ft, 26.ft, 34.ft), eaves: 11.ft, ridge: 20.ft, roof: 'gable', neighbour: true
paving 'drive', rect(38.ft, 70.ft, 21.9.ft, 14.ft), surface: 'concrete'; compostBay 'compost bay', rect(38.ft, 84.ft, 6.ft, 4.ft)
fence 'rear fence', line([point(0.2.ft, 56.ft), point(0.2.ft, 99.8.ft), point(59.ft, 99.8.ft)]), height: 5.ft, openness: 0.3
gate 'drive', point(58.ft, 76.ft)
tap 'east tap', point(36.ft, 50.ft), source: 'mains'
roof 'whole roof', rect(6.5.ft, 22.5.ft, 31.ft, 33.ft), surface: 'metal'
// One tank waters all rows by its height alone; in the dry weeks the tap fills it over a gap of air. What it lets go sinks in in front.
tank('cistern', point(4.75.ft, 48.ft), roof: 'whole roof') { round diameter: 5.5.ft, height: 6.ft ; stand 18.inch }
supply tank: 'cistern'; bucketTest volume: 5.gal, seconds: 48
cloudburst 3.inch, source: 'demo figure, ask the city'; downspout point(6.5.ft, 51.ft), roof: 'whole roof', inside: 3.inch
overflow(line([point(4.75.ft, 45.25.ft), point(4.75.ft, 10.ft), point(8.ft, 10.ft)]), from: 'cistern', inside: 3.inch)
basin('front hollow', rect(8.ft, 3.ft, 18.ft, 10.ft), drains: 'whole roof', depth: 6.inch)
utility 'water service', line([point(30.ft, 0.ft), point(30.ft, 24.ft)]), carries: 'water', clearance: 2.ft
tree 'birch', point(52.ft, 61.ft), crown: 14.ft, height: 28.ft, crownBase: 6.ft, trunk: 8.inch, standing: true, leaf: 'deciduous'

sheetMulch { chips perennial: 3.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
lightScheme 'temperate'
dropZone 'drive', rect(39.ft, 70.5.ft, 20.ft, 13.ft), access: 10.ft
work crew: 2, hoursPerDay: 6, start: '2026-10-05', lastFrost: '03-15', firstFrost: '11-15'
soilTexture 'sandy loam', organic: 3
soilTest { acidity ph: 5.8, wanted: 6.5 ; lead 42 ; organic wanted: 4, mixDepth: 6.inch }
shadeStage 'year 5'

// Behind and beside the house the lawn is turned over; the power company's strip and the street corner stay in grass.
mulchedGround('turned lawn', (rect(-1.ft, 54.ft, 39.ft, 38.ft) + rect(36.ft, 24.ft, 11.ft, 46.ft)) & yard.shape) { mulch 3.inch }
path 'west path', line([point(2.75.ft, 54.ft), point(2.75.ft, 92.ft)]), width: 4.5.ft, use: 'barrow'
path 'spine', line([point(36.5.ft, 54.ft), point(36.5.ft, 92.ft)]), width: 3.ft, use: 'barrow'
path 'wall path', line([point(38.ft, 24.ft), point(38.ft, 54.ft)]), width: 4.ft, use: 'barrow'
path 'drive path', line([point(39.ft, 54.ft), point(39.ft, 70.ft)]), width: 2.ft
path 'berry path', line([point(45.5.ft, 24.ft), point(45.5.ft, 70.ft)]), width: 3.ft, use: 'barrow'
def names = ['Shade bed', 'Greens', 'Strawberries', 'Dry herbs', 'Espaliers', 'Herbs', 'Raspberries']
def kinds = [['lovage', 'lemon balm'], ['kale', 'Swiss chard', 'lettuce'], ['garden strawberry'], ['sage', 'thyme'], ['chives', 'woodland strawberry'],
  ['sorrel', 'Welsh onion'], ['red raspberry']]
for (i in 0..6) {
  def east = i == 5 ? rect(40.ft, 48.ft, 4.ft, 22.ft) : rect(40.ft, 24.ft, 4.ft, 22.ft)
  bed(names[i], i < 5 ? rect(5.ft, 57.ft + 7.ft * i, 30.ft, 4.ft) : east, use: i == 1 ? 'annual' : 'perennial') {
    drip emitter: 1.gph, spacing: 12.inch, rowSpacing: 16.inch
    for (kind in kinds[i]) plant kind
  }
}
for (i in 0..1) {
  tree("Apple ${i + 1}", point(12.ft + 15.ft * i, 87.ft), crown: 10.ft, height: 8.ft, standing: false) {
    species 'apple (dwarf)'; variety(['Liberty', 'Akane'][i], blooms: 'midseason')
    trained 'espalier', width: 10.ft
  }
}
trellis 'wires', line([point(6.ft, 87.ft), point(33.ft, 87.ft)]), wires: 4
