// Lines that a tank feeds by its height: formulas that no plan with a tap prints.
plan 'Lines from a tank', units: 'us'
site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
soilTexture 'silt loam', organic: 3
lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
building('shed', rect(4.ft, 4.ft, 12.ft, 9.ft), eaves: 8.ft)
roof 'shed roof', rect(3.5.ft, 3.5.ft, 6.ft, 5.ft), surface: 'metal'
tank('barrel', point(20.ft, 8.ft), roof: 'shed roof') {
  round diameter: 2.ft, height: 3.ft
  stand 30.inch
  serves(['greens'])
}
bucketTest volume: 5.gal, seconds: 50
supply tank: 'barrel'
work crew: 2, hoursPerDay: 6, start: '2026-04-20'
frost last: '04-25', first: '10-14', source: 'by hand'
bed('greens', rect(18.ft, 18.ft, 14.ft, 6.ft), use: 'annual') {
  drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 18.inch
  plant 'tomato', share: 0.7
  plant 'kale', share: 0.3
}
