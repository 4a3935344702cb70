// A plan that takes what a regional file says: its soil by name, its rates and rules.
plan 'Recipe: regional file', units: 'us'
include 'regional/river-flats'
soilNamed 'flat loam'
lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
bed 'herbs', rect(5.ft, 5.ft, 20.ft, 4.ft), use: 'perennial'
