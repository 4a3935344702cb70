// A corner lot: two fronts with setbacks of their own, and a sight triangle where the streets meet.
plan 'Recipe: corner lot', units: 'us'
lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 90.ft), point(0.ft, 90.ft)]) {
  side 'south', role: 'front', setback: 25.ft, rule: 'zoning sheet of the city'
  side 'east', role: 'corner side', setback: 15.ft, rule: 'zoning sheet of the city'
  side 'north', role: 'rear', setback: 5.ft, rule: 'zoning sheet of the city'
  side 'west', role: 'side', setback: 5.ft, rule: 'zoning sheet of the city'
  sightTriangle 'south', 'east', legFirst: 25.ft, legSecond: 25.ft, clearFrom: 30.inch, clearTo: 8.ft, rule: 'street code'
}
building 'house', rect(12.ft, 30.ft, 30.ft, 28.ft), eaves: 10.ft
bed 'street bed', rect(20.ft, 4.ft, 20.ft, 4.ft), use: 'perennial'
