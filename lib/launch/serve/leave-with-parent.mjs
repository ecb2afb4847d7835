// Loaded before a server or worker: when the process that started it is gone, it must not stay behind.
if (process.channel) {
  process.on("disconnect", () => process.exit(0));
  process.channel.unref();
}
