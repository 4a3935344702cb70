// A keyhole bed: a round bed of 6 ft across with a way in from the south, so that all of it is within reach.
plan 'Recipe: keyhole bed', units: 'us'
lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
bed('keyhole', keyhole(point(20.ft, 18.ft), 3.ft, facing: 180.deg), use: 'annual') {
  plant 'kale'
}
path 'way in', line([point(20.ft, 2.ft), point(20.ft, 15.ft)]), width: 2.ft
