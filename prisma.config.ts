import { defineConfig } from "prisma/config";

// Only the ordinary command line reads the address; the app and `npm start` are given theirs by the environment.
const url = process.env["DATABASE_URL"];

export default defineConfig({
  schema: "prisma/schema",
  migrations: { path: "prisma/migrations" },
  ...(url ? { datasource: { url } } : {}),
});
