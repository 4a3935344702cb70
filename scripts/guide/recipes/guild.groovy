// A guild: an apple in a ring of mulch, and a bed of companions below it, planted with the tree.
plan 'Recipe: guild', units: 'us'
site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
def heart = point(25.ft, 20.ft)
tree('apple', heart, crown: 12.ft, height: 12.ft, standing: false, leaf: 'deciduous') {
  species 'apple (semi-dwarf)'
  mulchRing 2.ft
}
bed('companions', ring(heart, 2.ft, 6.ft), use: 'perennial') {
  plant 'chives', share: 0.5
  plant 'woodland strawberry', share: 0.5
}
