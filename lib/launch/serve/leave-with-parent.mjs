// Loaded before a server or worker: when the process that started it is gone, it must not stay behind. Whatever that
// server starts inherits this file too, but has a parent of its own to answer to.
if (process.channel && process.env.SHUTTERWRIGHT_STARTER === String(process.ppid)) {
  process.on("disconnect", () => process.exit(0));
  process.channel.unref();
}
