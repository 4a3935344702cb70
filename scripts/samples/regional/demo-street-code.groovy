// A street code of an invented city, for demonstration. Write such a file from your own city's code, include it
// at the top of a plan, before the lot, and have it verified. What the plan says after it goes before it.
def code = 'demo street code, verify locally'
setbackFor 'front', distance: 20.ft, rule: code
setbackFor 'corner side', distance: 10.ft, rule: code
setbackFor 'corner side', distance: 16.ft, above: 25.ft, rule: code
setbackFor 'side', distance: 5.ft, rule: code
setbackFor 'rear', distance: 10.ft, to: 'eaves', rule: code
sightRule legFirst: 30.ft, legSecond: 30.ft, clearFrom: 30.inch, clearTo: 8.ft, rule: code
treeProtection factor: 12, rule: code
pathRule 'barrow', least: 30.inch, turning: 5.ft, rule: code
