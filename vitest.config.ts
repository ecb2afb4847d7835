import { defineConfig } from "vitest/config";

// `server-only` throws unless the react-server condition is set; Node hands it to the modules vitest leaves external.
const server = { resolve: { conditions: ["react-server"] }, ssr: { resolve: { conditions: ["react-server"] } } };

export default defineConfig({
  test: {
    projects: [
      {
        ...server,
        test: {
          name: "unit",
          include: ["tests/{unit,validation,architecture}/**/*.test.{ts,tsx}"],
          environment: "node",
          // The first test that reads the whole tree takes seconds where the machine is busy.
          testTimeout: 30_000,
        },
      },
      {
        ...server,
        test: {
          name: "integration",
          include: ["tests/integration/**/*.test.ts"],
          environment: "node",
          globalSetup: ["tests/support/database-setup.ts"],
          testTimeout: 30_000,
          hookTimeout: 60_000,
          env: { LOG_LEVEL: "silent" },
        },
      },
    ],
  },
});
