// Reads networks as EPANET input texts, a JSON list, and writes the flow of the link P of each.
import { readFileSync } from "node:fs";
import { Project, Workspace } from "epanet-js";

const workspace = new Workspace();
await workspace.loadModule();
const flows = JSON.parse(readFileSync(0, "utf8")).map((text) => {
  const model = new Project(workspace);
  workspace.writeFile("case.inp", text);
  model.open("case.inp", "case.rpt", "case.out");
  model.openH();
  model.initH(0);
  model.runH();
  const flow = model.getLinkValue(model.getLinkIndex("P"), 8); // 8: EN_FLOW
  model.closeH();
  model.close();
  return flow;
});
process.stdout.write(JSON.stringify(flows));
