// An invented yard in Urbana, Illinois, about 60 by 120 ft, measured by tape; street to the south.
plan 'Urbana yard', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'us'
site 'Urbana, Illinois', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
formerLawn 'cool season'
frost last: '04-25', first: '10-14', source: 'demo figures, ask the state climatologist'
hardinessZone '6a', source: 'demo figure, look it up on the zone map'; demonstrationPrices()
def bedWidth = param('bedWidth', 4.ft, 'width of the annual beds')
// Baseline: the two front stakes. Three tapes to each rear stake check each other. The tape from the SE to
// the NW stake first read 124.17 ft: its residual stood out, so it was dropped and taped again.
def sw = point(0.ft, 0.ft)
def se = point(60.ft, 0.ft)
def corner = point(12.ft, 27.ft)
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
def rule = 'demo rule, verify locally'
lot([sw, se, ne, nw]) {
  side 'south', role: 'front', setback: 25.ft, rule: rule
  side 'east', role: 'side', setback: 5.ft, rule: rule
  side 'west', role: 'side', setback: 5.ft, rule: rule
  side 'north', role: 'rear', setback: 10.ft, rule: rule
}
building('house', rect(12.ft, 27.ft, 32.ft, 27.ft), eaves: 10.ft, ridge: 18.ft, overhang: 1.ft, roof: 'gable')
building 'next door', rect(-32.ft, 30.ft, 24.ft, 34.ft), eaves: 10.ft, ridge: 19.ft, roof: 'gable', neighbour: true
gate 'drive', point(52.ft, 45.ft)
paving 'drive', rect(47.ft, 0.ft, 10.ft, 46.ft), surface: 'concrete'
fence 'back fence', line([point(0.5.ft, 66.ft), point(0.5.ft, 119.5.ft), point(59.5.ft, 119.5.ft), point(59.5.ft, 66.ft)]), height: 6.ft
tap 'hose bib', point(42.ft, 54.ft), source: 'mains'
roof 'rear slope', rect(11.ft, 40.5.ft, 34.ft, 14.5.ft), surface: 'asphalt shingle'
utility 'gas line', line([point(6.ft, 0.ft), point(6.ft, 31.ft), point(12.ft, 31.ft)]), carries: 'gas', clearance: 2.ft
tree 'maple', point(20.ft, 12.ft), crown: 22.ft, height: 30.ft, trunk: 12.inch, standing: true, leaf: 'deciduous'
path 'cross path', line([point(52.ft, 46.ft), point(52.ft, 60.ft), point(7.ft, 60.ft)]), width: 4.ft, use: 'barrow'
path 'middle path', line([point(30.ft, 62.ft), point(30.ft, 104.ft)]), width: 4.ft, use: 'barrow'
for (i in 1..2) path("berry path ${i}", line([point(31.25.ft + 7.5.ft * i, 62.ft), point(31.25.ft + 7.5.ft * i, 102.ft)]), width: 3.ft, use: 'barrow')

sheetMulch { chips perennial: 12.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
beds('kitchen', rect(6.ft, 65.ft, 22.ft, 37.ft), width: bedWidth, gap: 2.ft, bearing: 90.deg, use: 'annual') {
  drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 16.inch
  plant 'tomato', share: 0.5
  plant 'kale', share: 0.5
}
def kinds = ['red raspberry', 'asparagus', 'garden strawberry']
for (i in 0..2) {
  bed("${kinds[i]} bed", rect(33.ft + 7.5.ft * i, 65.ft, 4.ft, 37.ft), use: 'perennial') {
    drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 16.inch
    plant kinds[i], layout: 'staggered'
  }
}
for (i in 0..2) {
  tree("apple ${i + 1}", point(12.ft + 18.ft * i, 111.ft), crown: 12.ft, height: 12.ft, leaf: 'deciduous', standing: false) { species 'apple (semi-dwarf)' }
}
