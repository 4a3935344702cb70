// Words that no sample uses, so that their formulas too are worked out again from what is printed.
plan 'Rare words', units: 'us'
openGround 'weeds'
daysOff(['2026-09-08', '07-04'])
sheets(['cover', 'layout', 'crew'])
site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climateBook 'climate,place,quantity,unit,jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec\nhill,Hill farm,rain,mm,60,50,55,45,40,30,20,25,40,55,65,70\nhill,Hill farm,max,degC,7,8,11,14,18,21,23,23,20,15,10,7\nhill,Hill farm,min,degC,1,1,3,5,8,11,13,13,10,7,4,2', windHeight: 10.m, name: 'hill climate'
climate 'urbana-il'
effectiveRain 'usbr'
fogDrip([0.mm, 0.mm, 1.mm, 2.mm, 3.mm, 5.mm, 7.mm, 6.mm, 4.mm, 1.mm, 0.mm, 0.mm], source: 'by hand')
solarRadiation([1.9, 2.7, 3.6, 4.7, 5.7, 6.3, 6.2, 5.5, 4.6, 3.3, 2.1, 1.6], source: 'by hand', unit: 'kwh')
hourlyWeather 'time,temp,dew,wind_ms,solar_mj\n2025-07-01T10:00,28,15,2.1,2.5', source: 'by hand'
waterAllowance factor: 0.5, efficiency: 0.9, rainCredit: true
cloudburst 5.inch, source: 'by hand'
lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 60.ft), point(0.ft, 60.ft)])
building('house', rect(8.ft, 8.ft, 30.ft, 20.ft), eaves: 10.ft, ridge: 16.ft, overhang: 1.ft, roof: 'hip')
roof 'south slope', rect(7.ft, 7.ft, 32.ft, 11.ft), surface: 'metal'
roofShare 'south slope', 0.91, source: 'measured'
rainGarden 'south slope', slope: 3, storm: 1.inch
downspout point(38.ft, 7.ft), roof: 'south slope', inside: 3.inch
gutter 'south slope', width: 5.inch, fall: 0.01
tank('cistern', point(44.ft, 3.ft), roof: 'south slope') {
  round diameter: 3.ft, height: 3.5.ft, count: 2
  stand 9.inch
  serves(['framed', 'edged'])
  otherUse 2.gal
  inlet firstFlush: 0.02.inch, screened: 0.95
  order 'rain before use'
  costs 640
}
tank('barrel', point(3.ft, 3.ft), roof: 'south slope') { box width: 2.ft, depth: 2.ft, height: 3.ft }
overflow(line([point(44.ft, 3.ft), point(55.ft, 3.ft)]), from: 'cistern', inside: 4.inch)
basin('corner', rect(54.ft, 1.ft, 13.ft, 7.ft), drains: 'south slope', depth: 6.inch, storm: 1.25.inch)
soilTexture 'clay loam', organic: 3
soilTest { acidity ph: 6.8 ; nitrogen rate: 2.lb, grade: '5-10-10' ; organic wanted: 4, mixDepth: 6.inch }
residue 'shrub trimmings', 1.5.yd3
residue 'grass clippings', 1.yd3
tap 'bib', point(39.ft, 18.ft)
supply pressure: 55.psi
bucketTest volume: 4.gal, seconds: 45
headAssembly regulator: 18.psi, backflow: 'reduced pressure', timer: false
sheetMulch { chips perennial: 10.inch, annual: 2.inch, path: 4.inch, edgeTaper: 2.ft, settling: 0.25 ; compost annual: 3.inch, perennial: 1.5.inch }
bulkMaterial 'biochar', weighs: 400.lb, wet: 700.lb, each: 1.yd3, load: 2.yd3, source: publication('Leaflet', by: 'a kiln', seen: 'memory')
bulkMaterials 'material,weighs_lb,each_yd3,load_yd3\nrice straw,110,1,7\ndecomposed granite,2500,1,10', name: 'bulk'
bed('framed', rect(10.ft, 34.ft, 4.ft, 13.ft), use: 'annual') {
  frame '2x10', stock: 8.ft
  soilTop 10.inch
  drip emitter: 0.5.gph, spacing: 9.inch, rowSpacing: 14.inch
  plant 'carrot', share: 0.5
  waterNeed([0.inch, 0.inch, 0.inch, 0.5.inch, 1.inch, 2.inch, 3.inch, 2.5.inch, 1.5.inch, 0.inch, 0.inch, 0.inch], source: 'measured')
  plant 'kale', share: 0.5
}
bed('edged', rect(20.ft, 34.ft, 9.ft, 17.ft), use: 'perennial') {
  edging 'steel strip', piece: 10.ft
  drip emitter: 0.9.gph, spacing: 18.inch, rowSpacing: 24.inch, compensating: true, rated: 15.psi, exponent: 0.05, bore: 0.6.inch
  plant 'asparagus'
  varieties 'asparagus', names: 'one, two'
  plantThinned 'asparagus', to: 3.ft, season: 3
  plantFactor 0.4
}
household children: true, pets: true ; rotation years: 3
mulchedGround('turned over', rect(2.ft, 30.ft, 15.ft, 28.ft)) { mulch 5.inch ; compost 0.5.inch ; layer 'rice straw', 2.inch }
bed('keyhole', keyhole(point(42.ft, 42.ft), 4.ft, facing: 180.deg), use: 'annual') { layer 'biochar', 0.5.inch ; dry 'herbs of the steppe' ; suggest kinds: 2, harvest: 'May to October' }
trellis 'grapes', line([point(52.ft, 34.ft), point(52.ft, 55.ft)]), wires: 3
pavers 'terrace', rect(42.ft, 10.ft, 11.ft, 7.ft), length: 8.inch, width: 4.inch
tree('apple', point(62.ft, 45.ft), crown: 12.ft, height: 12.ft) {
  species 'apple (semi-dwarf)'
  variety 'Ashmead', selfFruitful: false, blooms: 'late'
  mulchRing 3.ft
  emitters flow: 2.gph, share: 0.4
}
wall 'terrace wall', line([point(30.ft, 29.ft), point(39.ft, 29.ft)]), height: 2.ft, retains: true, standing: false
steps 'garden steps', line([point(40.ft, 30.ft), point(40.ft, 33.ft)]), rise: 20.inch, width: 3.ft, standing: false
fence 'back fence', line([point(1.ft, 59.ft), point(69.ft, 59.ft)]), height: 5.ft, openness: 0.2, standing: false
gate 'back gate', point(30.ft, 59.ft), width: 4.ft
hedge 'bay hedge', line([point(69.ft, 20.ft), point(69.ft, 40.ft)]), height: 4.ft, spacing: 30.inch, standing: false
paving 'slab', rect(2.ft, 20.ft, 5.ft, 6.ft), surface: 'concrete', standing: false
paving 'flags', rect(2.ft, 10.ft, 5.ft, 6.ft), surface: 'flagstone', standing: false
truckLane 'lane', line([point(68.5.ft, 0.ft), point(68.5.ft, 5.ft)]), width: 3.ft, standing: false
structure 'shed', rect(45.ft, 20.ft, 7.ft, 6.ft), height: 8.ft, standing: false
path('way', line([point(17.ft, 30.ft), point(17.ft, 56.ft)]), width: 3.ft, use: 'barrow') { layer 'decomposed granite', 2.inch }
bestSpot 60.sqft, crop: 'kale'
work crew: 3, hoursPerDay: 7, start: '2026-09-07', lastFrost: '04-25', firstFrost: '10-14'
tree('guild pear', point(62.ft, 12.ft), crown: 10.ft, height: 12.ft, standing: true) { species 'European pear' }
contourRows from: 0.07
bed('guild', rect(57.ft, 6.ft, 10.ft, 12.ft), use: 'perennial') {
  emitters flow: 0.5.gph, compensating: true, rated: 18.psi
  plantRing 'chives', round: 'guild pear', radius: 3.ft, count: 7
  guild round: 'guild pear', insectPlant: 'yarrow', from: 1.5.ft
  plantRow 'sage', along: line([point(58.5.ft, 7.ft), point(58.5.ft, 17.ft)]), spacing: 2.ft
  plantDrift 'thyme', about: point(65.ft, 16.ft), count: 3
  plantAt 'lovage', at: [point(65.ft, 8.5.ft)]
}
bed('meadow', rect(57.ft, 48.ft, 11.ft, 4.ft), use: 'perennial') {
  plantMix 'garden strawberry', share: 0.6
  plantMix 'sorrel', count: 5, stock: 'tray of 50'
}
bed('turns', rect(57.ft, 53.5.ft, 9.ft, 3.ft), use: 'annual') {
  keepOrder 'the trellis stands at one end'
  plant 'pea', rowSpacing: 12.inch
  plantNext 'bush bean', after: 'pea', days: 62
}
compostBay 'bay', rect(50.ft, 12.ft, 4.ft, 3.ft)
item 'drain rock', amount: 2.5.yd3, per: 'yd3', price: 44.money, low: 40.money, high: 50.money, hours: 1.5, phase: 'earth'
task 'carry the old shed out', hours: 6, phase: 'earth'
itemBook 'item,count,unit,price,hours,phase\nbench,3,piece,180,0.5,finish'
labourBook 'task,unit,low,likely,high\ncut edge,ft,0.02,0.04,0.07'
note 'old well, filled', at: point(66.ft, 30.ft)
dimension point(40.ft, 34.ft), point(40.ft, 51.ft), offset: 1.ft, text: 'beds'
hideLabel 'path'
logo '<svg viewBox="0 0 8 4"><path fill="#2f5d1e" d="M0 4L4 0L8 4Z"/></svg>'
theme 'bed', fill: '#e8eefb', line: '#1f3f7a', weight: 0.5.mm
themeText headings: '#1f4e79', capitals: 2.6.mm
detail('Edge of a bed', scale: 10, sheet: 'layout') {
  piece rect(0.ft, 0.ft, 2.inch, 1.ft), of: 'wood', says: 'Cedar'
  piece rect(2.inch, 0.ft, 2.ft, 9.inch), of: 'compost'
  edge line([point(-1.ft, 3.inch), point(0.ft, 3.inch)])
  dimension point(2.inch, 0.ft), point(2.inch, 9.inch)
  note 'two screws', at: point(1.inch, 11.inch)
}
accept 'planting.harm', why: 'the household has no children'
country 'US'
siteAddress '14 Linden Walk, Urbana'
contact 'Household', phone: '217 555 0142', onSite: true
contact 'Pipe shop', phone: '(217) 555-0198 ext 12', role: 'parts of the head'
revision 'A', date: '2026-04-02', what: 'cistern moved to the north wall'
revision 'B', date: '2026-05-11', what: 'bay hedge added'
catchTest 'zone 1', [60, 62, 58, 55, 64, 61, 59, 57]
stockForm 'tray of 50', like: 'plug', holds: 50, minutes: 0.9, fastest: 0.5, slowest: 2, price: 32.money, low: 28.money, high: 39.money
stockForms 'form,like,holds,minutes,price\ntray of 72,plug,72,0.8,38'
plantSpares 0.07
localPlants 'watched', names: 'Pyrus calleryana, hops', say: 'it spreads', source: publication('Watch list', by: 'the county', seen: 'memory')
pipeSize '1 in PN10', bore: 1.02.inch, roll: 200.ft, tube: 'pressure pipe', source: publication('Price list', by: 'a pipe yard', seen: 'memory')
pipeSizes 'size,bore_in,roll_ft\n2 in,2.067,300', only: false, name: 'pipes'
headPart 'disc filter', like: 'filter', loss: 1.2.psi, at: 4.gpm, purpose: 'keeps out grains; rinse it monthly', source: publication('Leaflet', by: 'its maker', seen: 'memory')
headParts 'part,after,loss_psi,at_gpm,purpose\nwater meter,timer,0.8,6,counts what the garden takes', name: 'parts'
ownPlant('fig-leaf gourd', like: 'winter squash', botanical: 'Cucurbita ficifolia', source: publication('Trial of gourds', by: 'our own garden', seen: 'read')) { grown spread: 5.ft ; yields high: 40.lb ; needs drainage: 'good' ; seasons pickFrom: 120, pickUntil: 150 ; pollinated 'partner', within: 80.ft ; traits roles: 'insect plant' }
plantBook 'plant,like,spread_in,zone\nperry pear,European pear,240,5'
stage('last of all') { note 'all of this is one stage', at: point(3.ft, 3.ft) }
wateringZone(['framed', 'edged'])
swale 'ditch', line([point(60.ft, 24.ft), point(60.ft, 34.ft)]), bottom: 6.inch, depth: 4.inch, sides: 2
berm 'bank', of: 'ditch', side: 'right', top: 6.inch, sides: 1.5
