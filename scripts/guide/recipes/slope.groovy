// A slope: levels at the corners, a contour for the swale, and a bed along it below.
plan 'Recipe: slope', units: 'us'
lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
def ground = levels {
  level point(0.ft, 0.ft), 100.ft
  level point(60.ft, 0.ft), 100.5.ft
  level point(0.ft, 50.ft), 104.ft
  level point(60.ft, 50.ft), 104.5.ft
}
def along = ground.contour(102.5.ft).part(3.ft, 50.ft)
swale 'swale', along, bottom: 2.ft, depth: 8.inch, sides: 3
bed 'below the swale', rect(10.ft, 15.ft, 40.ft, 4.ft), use: 'perennial'
