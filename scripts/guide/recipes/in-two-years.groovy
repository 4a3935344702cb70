// In two years: one bed stands already, the back is made in the first year, the front and a bench in the second.
plan 'Recipe: in two years', units: 'us'
lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
work crew: 2, hoursPerDay: 5
stage('there already', built: true) {
  bed('old herbs', rect(50.ft, 8.ft, 4.ft, 12.ft), use: 'perennial') { plant 'sage' }
}
stage('first year', from: '2027-04-05') {
  path 'back path', line([point(8.ft, 34.ft), point(44.ft, 34.ft)]), width: 3.ft, use: 'barrow'
  bed('back bed', rect(8.ft, 36.ft, 36.ft, 4.ft), use: 'perennial') { plant 'chives' }
}
stage('second year', from: '2028-04-03') {
  bed('front bed', rect(6.ft, 6.ft, 30.ft, 4.ft), use: 'perennial') { plant 'thyme' }
  item 'bench', count: 1, hours: 2, phase: 'finish'
}
