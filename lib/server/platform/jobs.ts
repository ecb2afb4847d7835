import "server-only";
import type { TaskList } from "graphile-worker";
import { transaction } from "./db.ts";
import { log } from "./log.ts";

/** Work that belongs to no request; rows in the database, run by whichever worker is free. */
export const taskList: TaskList = {
  tidyTheDoor: async () => {
    await transaction((tx) => tx.$queryRaw`select 1 from (select door_tidy()) tidied`);
    log.info("tidied old sign-in failures");
  },
};

export const crontab = "17 2 * * * tidyTheDoor";
