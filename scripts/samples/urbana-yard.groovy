// An invented yard in Urbana, Illinois, about 60 by 120 ft, measured by tape; street to the south.
plan 'Urbana yard', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'us'
site 'Urbana, Illinois', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'; formerLawn 'cool season'
frost last: '04-25', first: '10-14', source: 'demo figures, ask the state climatologist'
contact 'Site foreman', phone: '555-0100', onSite: true; hardinessZone '6a', source: 'demo figure, look it up on the zone map'; demonstrationPrices()
include 'regional/tallgrass-flats'
soilNamed 'Catlin silt loam', depth: 24.inch
def bedWidth = param('bedWidth', 4.ft, 'width of the berry and kitchen beds')
// Baseline: the two front stakes. Three tapes to each rear stake check each other. The tape from the SE to
// the NW stake first read 124.17 ft: its residual stood out, so it was dropped and taped again.
def sw = point(0.ft, 0.ft); def se = point(60.ft, 0.ft); def corner = point(12.ft, 27.ft)
def nw = tied('NW stake', near: point(0.ft, 120.ft)) {
  tape sw, 120.01.ft, name: 'SW stake'
  tape se, 134.17.ft, name: 'SE stake'
  tape corner, 93.75.ft, name: 'house corner'
}
def ne = tied('NE stake', near: point(60.ft, 120.ft)) {
  tape sw, 134.17.ft, name: 'SW stake'
  tape se, 120.00.ft, name: 'SE stake'
  tape corner, 104.67.ft, name: 'house corner'
}
def yard = lot([sw, se, ne, nw]) {
  side 'south', role: 'front', setback: 25.ft, rule: 'example only, verify locally'
  for (s in ['east', 'west']) side s, role: 'side', setback: 3.ft, rule: 'example only, verify locally'
  side 'north', role: 'rear', setback: 3.ft, rule: 'example only, verify locally'
}
building('house', rect(12.ft, 27.ft, 32.ft, 27.ft), eaves: 10.ft, ridge: 18.ft, overhang: 1.ft, roof: 'gable')
building 'next door', rect(-32.ft, 30.ft, 24.ft, 34.ft), eaves: 10.ft, ridge: 19.ft, roof: 'gable', neighbour: true
gate 'drive', point(52.ft, 45.ft)
dropZone 'drive', rect(47.5.ft, 20.ft, 9.ft, 24.ft), access: 10.ft
paving 'drive', rect(47.ft, 0.ft, 10.ft, 46.ft), surface: 'concrete'
fence 'back fence', line([point(0.2.ft, 58.ft), point(0.2.ft, 119.8.ft), point(59.8.ft, 119.8.ft), point(59.8.ft, 58.ft)]), height: 6.ft
tap 'hose bib', point(42.ft, 54.ft), source: 'mains'; supply flow: 5.gpm
roof 'rear slope', rect(11.ft, 40.5.ft, 34.ft, 14.5.ft), surface: 'asphalt shingle'
utility 'gas line', line([point(6.ft, 0.ft), point(6.ft, 31.ft), point(12.ft, 31.ft)]), carries: 'gas', clearance: 2.ft
tree 'maple', point(20.ft, 12.ft), crown: 22.ft, height: 30.ft, trunk: 12.inch, standing: true, leaf: 'deciduous'
trellis 'raspberry wires', line([point(4.ft, 107.5.ft), point(56.ft, 107.5.ft)]), wires: 2
shadeStage 'mature'; work crew: 3, hoursPerDay: 6, start: '2026-09-14'

// The whole back lawn is turned over, fence to fence: beds and barrow paths lie in it, aisles are what is left.
sheetMulch { chips perennial: 8.inch, annual: 2.inch, path: 4.inch, ground: 4.inch ; compost annual: 3.inch }
mulchedGround 'back lawn', rect(-1.ft, 54.ft, 62.ft, 67.ft) & yard.shape
compostBay 'compost bay', rect(3.5.ft, 56.5.ft, 8.ft, 4.ft)
path 'drive path', line([point(52.ft, 46.ft), point(52.ft, 60.5.ft)]), width: 4.ft, use: 'barrow'
path 'cross path', line([point(3.5.ft, 62.5.ft), point(59.5.ft, 62.5.ft)]), width: 4.ft, use: 'barrow'
path 'middle path', line([point(28.ft + bedWidth * 0.5, 64.5.ft), point(28.ft + bedWidth * 0.5, 102.5.ft)]), width: 7.ft - bedWidth, use: 'barrow'
path 'east path', line([point(58.ft, 64.5.ft), point(58.ft, 112.5.ft)]), width: 3.ft, use: 'barrow'
for (y in [104, 111]) path(y == 104 ? 'berry path' : 'apple path', line([point(3.5.ft, y * 1.ft), point(56.5.ft, y * 1.ft)]), width: 3.ft, use: 'barrow')
def names = ['Asparagus', 'Flowers', 'Crowns', 'Strawberries', 'Kitchen 1', 'Kitchen 2', 'Dry herbs', 'Greens', 'Shade bed',
  'Raspberries', 'Apple bed']
def kinds = [['asparagus'], ['purple coneflower', 'anise hyssop'], ['rhubarb', 'sea kale'], ['garden strawberry'], ['kale', 'tomato'],
  ['lettuce', 'carrot', 'bush bean'], ['sage', 'thyme', 'oregano'], ['chives', 'sorrel', 'good King Henry'],
  ['lovage', 'lemon balm'], ['red raspberry'], ['sterile comfrey', 'bee balm', 'garlic chives']]
for (i in 0..10) {
  def cross = i == 8 ? rect(12.ft, 56.5.ft, 38.ft, 4.ft) : rect(3.5.ft, 42.5.ft + 7.ft * i, 49.ft + bedWidth, 4.ft)
  bed(names[i], i < 8 ? rect(3.5.ft + 7.ft * i, 64.5.ft, bedWidth, 38.ft) : cross, use: names[i].startsWith('Kitchen') ? 'annual' : 'perennial') {
    mulch i in [4, 5] ? 2.inch : i in [0, 9] ? 6.inch : 3.inch
    if (i in [1, 6]) { dry 'flowers and herbs of dry hills' } else { drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 16.inch }
    for (kind in kinds[i]) plant kind, layout: 'staggered'
  }
}
for (i in 0..2) {
  tree("Apple ${i + 1}", point(12.ft + 18.ft * i, 113.ft), crown: 11.8.ft, height: 12.ft, leaf: 'deciduous', standing: false) {
    species 'apple (semi-dwarf)'
    variety(['Liberty', 'Freedom', 'Liberty'][i], blooms: 'midseason')
    mulchRing 2.ft
  }
}
