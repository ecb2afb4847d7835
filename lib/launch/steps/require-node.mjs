// Read by whatever Node.js is there, however old: nothing here may be newer than Node.js 12.
const found = process.versions.node.split(".").map(Number);
if (found[0] < 20 || (found[0] === 20 && found[1] < 19)) {
  console.error("Shutterwright needs Node.js 20.19 or newer; this is " + process.versions.node + ".");
  process.exit(1);
}
