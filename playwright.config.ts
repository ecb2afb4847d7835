import { defineConfig, devices } from "@playwright/test";
import { chromiumFlags, findChromium } from "./tests/support/chromium.ts";

// The set-up names the browser and the address before any journey starts; each worker reads this file again.
const executablePath = process.env["E2E_URL"] ? process.env["CHROMIUM_PATH"] : findChromium();

const PLANNING = /e2e\/planning\//;

export default defineConfig({
  testDir: "tests/e2e",
  // One site for all: these plan for columns that are still to be cut, the others cut them.
  projects: [
    { name: "planning", testMatch: PLANNING },
    { name: "journeys", testIgnore: PLANNING, dependencies: ["planning"] },
  ],
  globalSetup: "./tests/support/browser-setup.ts",
  forbidOnly: true,
  retries: 0,
  workers: 2,
  // Two browsers, the server and its database share what cores there are: patience costs nothing where all is well.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  reporter: [["list"]],
  use: {
    ...devices["Desktop Chrome"],
    baseURL: process.env["E2E_URL"],
    // Traces are made while a journey runs, whether it fails or not, so they are asked for: TRACE=1.
    trace: process.env["TRACE"] ? "retain-on-failure" : "off",
    screenshot: "only-on-failure",
    launchOptions: { ...(executablePath ? { executablePath } : {}), args: [...chromiumFlags] },
  },
});
