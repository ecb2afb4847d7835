import { readFile, readdir } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory, ColumnTypeEnum } from "@prisma/driver-adapter-utils";
import pg from "pg";
import * as engineModule from "@prisma/schema-engine-wasm/schema_engine_bg";
import type { MigrationList, SchemaContainer, SchemaEngine } from "@prisma/schema-engine-wasm/schema_engine_bg";

export const schemaFolder = resolve("prisma/schema");
export const migrationsFolder = resolve("prisma/migrations");
export const noFilters = { externalTables: [], externalEnums: [] };

type Loadable = typeof engineModule & { __wbg_set_wasm(exports: WebAssembly.Exports): void };

let loaded: Promise<void> | undefined;

async function instantiate(): Promise<void> {
  const entry = createRequire(import.meta.url).resolve("@prisma/schema-engine-wasm/schema_engine_bg");
  const bytes = await readFile(join(dirname(entry), "schema_engine_bg.wasm"));
  const imports = { "./schema_engine_bg.js": engineModule as unknown as WebAssembly.ModuleImports };
  const { instance } = await WebAssembly.instantiate(bytes, imports);
  (engineModule as Loadable).__wbg_set_wasm(instance.exports);
  const begin = instance.exports["__wbindgen_start"];
  if (typeof begin === "function") begin();
}

const oneByteChar = 18;
const text = 25;

/** The adapter does not know PostgreSQL's one-byte "char", which the engine reads in the system catalogue. */
class CataloguePool extends pg.Pool {
  /** Which columns of the latest answer were of that type. */
  oneByteColumns: number[] = [];
  /** Why a script was refused, in PostgreSQL's words; the engine only passes on that it was. */
  refusal: unknown;

  constructor(connectionString: string) {
    super({ connectionString, max: 2 });
    const ask = this.query.bind(this) as (...given: readonly unknown[]) => Promise<pg.QueryResult>;
    const asText = async (...given: readonly unknown[]): Promise<pg.QueryResult> => {
      const result = await ask(...given);
      const fields = result.fields ?? [];
      this.oneByteColumns = fields.flatMap((field, index) => (field.dataTypeID === oneByteChar ? [index] : []));
      for (const field of fields) if (field.dataTypeID === oneByteChar) field.dataTypeID = text;
      return result;
    };
    Object.assign(this, { query: asText });
  }
}

type Adapter = Awaited<ReturnType<PrismaPg["connect"]>>;

/**
 * Two habits of the adapter do not suit a schema engine: it cuts a script at every semicolon, even inside a function
 * body, and it has no name for the one-byte "char".
 */
function suitEngine(adapter: Adapter, pool: CataloguePool): Adapter {
  const ask = adapter.queryRaw.bind(adapter);
  adapter.executeScript = async (script) => {
    await pool.query(script).catch((error: unknown) => {
      pool.refusal = error;
      throw error;
    });
  };
  adapter.queryRaw = async (query) => {
    const answer = await ask(query);
    for (const index of pool.oneByteColumns) answer.columnTypes[index] = ColumnTypeEnum.Character;
    return answer;
  };
  return adapter;
}

class EngineAdapter extends PrismaPg {
  constructor(private readonly pool: CataloguePool) {
    super(pool);
  }

  override async connect(): Promise<Adapter> {
    return suitEngine(await super.connect(), this.pool);
  }
}

/** Prisma's own schema engine, in the form that needs no download. */
export async function withSchemaEngine<T>(databaseUrl: string, use: (engine: SchemaEngine) => Promise<T>): Promise<T> {
  loaded ??= instantiate();
  await loaded;
  const pool = new CataloguePool(databaseUrl);
  pool.on("error", () => undefined);
  try {
    const factory = bindMigrationAwareSqlAdapterFactory(new EngineAdapter(pool));
    const engine = await engineModule.SchemaEngine.new({ datamodels: undefined }, () => undefined, factory);
    return await use(engine).finally(() => engine.free());
  } catch (error) {
    throw pool.refusal ?? error;
  } finally {
    await pool.end();
  }
}

export async function readSchema(folder = schemaFolder): Promise<SchemaContainer[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(".prisma")).sort();
  return Promise.all(
    names.map(async (name) => ({ path: join(folder, name), content: await readFile(join(folder, name), "utf8") })),
  );
}

export async function readMigrations(folder = migrationsFolder): Promise<MigrationList> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort();
  const migrationDirectories = await Promise.all(
    names.map(async (name) => {
      const content = await readFile(join(folder, name, "migration.sql"), "utf8");
      return { path: name, migrationFile: { path: "migration.sql", content: { tag: "ok" as const, value: content } } };
    }),
  );
  const content = await readFile(join(folder, "migration_lock.toml"), "utf8").catch(() => null);
  return { baseDir: folder, lockfile: { path: "migration_lock.toml", content }, shadowDbInitScript: "", migrationDirectories };
}
