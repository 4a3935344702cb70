// Rows of data, one bed for each: a value out of a row may stand wherever its kind is needed.
plan 'Recipe: rows', units: 'us'
lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 36.ft), point(0.ft, 36.ft)])
def rows = [
  ['north', 26.ft, 4.ft, 'tomato'],
  ['middle', 16.ft, 4.ft, 'kale'],
  ['south', 6.ft, 3.5.ft, 'lettuce'],
]
for (row in rows) {
  bed("${row[0]} bed", rect(8.ft, row[1], 20.ft, row[2]), use: 'annual') { plant row[3] }
}
// It is compared with and added to its like as it is; to multiply it, say of which kind it is.
for (row in rows) {
  Length depth = row[2]
  dimension point(30.ft, row[1]), point(30.ft, row[1] + depth), text: row[0]
  if (row[1] > 10.ft) { note 'reached from both sides', at: point(30.ft, row[1] + depth * 0.5) }
}
