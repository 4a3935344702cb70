// A small invented yard with something of everything that the report shows.
plan 'Yard with a story', client: 'demo <household>', author: 'demo & co', date: '2026-03-01', units: 'us'
site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
frost last: '04-25', first: '10-14', source: 'demo figures'
hardinessZone '6a', source: 'demo figure, look it up on the zone map'
lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft, 60.ft)])
building 'house', rect(8.ft, 4.ft, 24.ft, 16.ft), eaves: 9.ft, ridge: 15.ft, roof: 'gable'
roof 'house roof', rect(8.ft, 4.ft, 24.ft, 16.ft), surface: 'metal'
tap 'tap', point(20.ft, 20.ft), source: 'mains'
path 'walk', line([point(14.ft, 20.ft), point(14.ft, 50.ft)]), width: 4.ft, use: 'barrow'
sheetMulch { chips perennial: 3.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
work crew: 1, hoursPerDay: 5, start: '2026-09-14', lastFrost: '04-25', firstFrost: '10-14'
demonstrationPrices()
dropZone 'front', rect(0.ft, 44.ft, 10.ft, 12.ft), access: 8.ft
bed('Kitchen', rect(18.ft, 24.ft, 4.ft, 14.ft), use: 'annual') {
  drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 12.inch
  plant 'tomato', share: 0.6
  plant 'lettuce', share: 0.4
}
bed('Wide', rect(24.ft, 24.ft, 7.ft, 14.ft), use: 'perennial') {
  drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 16.inch
  plant 'garden strawberry'
}
tree('Apple', point(28.ft, 48.ft), crown: 9.ft, height: 9.ft, leaf: 'deciduous', standing: false) { species 'apple (semi-dwarf)' }
