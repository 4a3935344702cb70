// What nothing else counts: a cistern and a shed kit with price, hours and phase; a task; an accepted finding.
plan 'Recipe: own items', units: 'us'
lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
structure 'shed', rect(30.ft, 20.ft, 8.ft, 6.ft), height: 8.ft, standing: false
item 'cistern, 5000 gal', count: 1, price: 3900.money, hours: 9, phase: 'head'
item 'shed kit', of: 'shed', price: 2100.money, low: 1900.money, high: 2600.money, hours: 14, phase: 'finish'
task 'carry the old shed out', hours: 6, phase: 'earth'
bed 'herbs', rect(5.ft, 5.ft, 20.ft, 6.ft), use: 'perennial'
accept 'site.bed-reach', why: 'the household steps on boards', of: 'herbs'
note 'old well, filled', at: point(34.ft, 8.ft)
