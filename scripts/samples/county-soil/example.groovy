plan 'County soil', units: 'us'
lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 50.ft), point(0.ft, 50.ft)])
countySoilWell 'the well', point(10.ft, 12.ft), distance: 50.ft
bed 'near', rect(30.ft, 10.ft, 20.ft, 4.ft), use: 'annual'
bed 'far', rect(65.ft, 10.ft, 20.ft, 4.ft), use: 'annual'
