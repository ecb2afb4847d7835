import { randomBytes } from "node:crypto";
import pg from "pg";
import { clusterVariable, templateName } from "./test-cluster.ts";

export type TestDatabase = { readonly url: string; drop(): Promise<void> };

async function onCluster(sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: clusterUrl() });
  await client.connect();
  await client.query(sql).finally(() => client.end());
}

function clusterUrl(): string {
  const url = process.env[clusterVariable];
  if (!url) throw new Error("No PostgreSQL was started for this run: the integration tests' set-up does that.");
  return url;
}

/** A database of one's own, already migrated: the owner's address of it, and what removes it. */
export async function freshDatabase(): Promise<TestDatabase> {
  const name = `test_${randomBytes(6).toString("hex")}`;
  await onCluster(`create database ${name} template ${templateName} strategy file_copy`);
  const url = new URL(clusterUrl());
  url.pathname = name;
  return { url: url.href, drop: () => onCluster(`drop database if exists ${name} with (force)`) };
}

/** What the server reads of its surroundings once, and keeps. */
export function serveFrom(databaseUrl: string, env: Readonly<Record<string, string>> = {}): void {
  Object.assign(process.env, {
    DATABASE_URL: databaseUrl, NEXTAUTH_SECRET: "a secret only the tests of this product know", ALLOW_NEW_COMPANIES: "true", LOG_LEVEL: "silent", ...env,
  });
}
