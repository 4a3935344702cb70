// Solves every *.inp of a folder by the EPA's engine (npm epanet-js, MIT; the engine itself is public
// domain) and prints: file, joint, pressure in metres. Run with `node --input-type=module -e` in the
// folder in which the package is installed; the folder of the files is the last argument.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Project, Workspace } from 'epanet-js';
const folder = process.argv[process.argv.length - 1];
const space = new Workspace();
if (space.loadModule) await space.loadModule();
const lines = [];
for (const file of readdirSync(folder).filter((f) => f.endsWith('.inp')).sort()) {
  const text = readFileSync(join(folder, file), 'utf8');
  space.writeFile('net.inp', text);
  const model = new Project(space);
  model.open('net.inp', 'net.rpt', 'net.out');
  model.openH();
  model.initH(0);
  model.runH();
  const joints = text.split('[RESERVOIRS]')[0].split('\n').filter((l) => l.startsWith('j'));
  for (const joint of joints) {
    const id = joint.split(' ')[0];
    lines.push(`${file} ${id} ${model.getNodeValue(model.getNodeIndex(id), 11)}`);
  }
  model.closeH();
  model.close();
}
console.log(lines.join('\n'));
