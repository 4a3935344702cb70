// An invented yard that takes its soils, rates, codes and checks from a regional file.
plan 'Regional demo', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'us'
site 'east central Illinois', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 225.m, zone: 'America/Chicago'
climate 'urbana-il'; frost last: '04-25', first: '10-14', source: 'demo figures, ask the state climatologist'
include 'regional/tallgrass-flats'
soilNamed 'Drummer silty clay loam', depth: 24.inch
// What the plan says itself goes before the region.
localRule 'septic', 'No septic field: the house is on the sewer.', by: 'demo household', year: 2026

lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 100.ft), point(0.ft, 100.ft)]) {
  side 'south', role: 'front', setback: 25.ft, rule: 'example only, verify locally'
  for (s in ['east', 'west', 'north']) side s, role: s == 'north' ? 'rear' : 'side', setback: 5.ft, rule: 'example only, verify locally'
}
building('house', rect(14.ft, 25.ft, 32.ft, 26.ft), eaves: 10.ft, ridge: 18.ft, overhang: 1.ft, roof: 'gable')
paving 'drive', rect(48.ft, 0.ft, 11.ft, 25.ft), surface: 'concrete'
dropZone 'drive', rect(48.5.ft, 2.ft, 10.ft, 20.ft), access: 10.ft
sheetMulch { chips perennial: 4.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
work crew: 2, hoursPerDay: 6, start: '2027-04-05'; demonstrationPrices()
// Too near to the house on purpose: a check of the region's own says so.
bed('rain basin', rect(16.ft, 57.ft, 12.ft, 4.ft), use: 'perennial') { plant 'bee balm'; plant 'New England aster' }
path 'side path', line([point(50.ft, 24.ft), point(50.ft, 55.5.ft), point(18.ft, 55.5.ft)]), width: 3.ft, use: 'barrow'
path 'back path', line([point(34.ft, 53.ft), point(34.ft, 94.ft)]), width: 4.ft, use: 'barrow'
bed('kitchen bed', rect(36.ft, 66.ft, 4.ft, 24.ft), use: 'annual') { plant 'kale'; plant 'carrot'; plant 'lettuce' }
bed('berry bed', rect(28.ft, 66.ft, 4.ft, 24.ft), use: 'perennial') { plant 'red raspberry' }
