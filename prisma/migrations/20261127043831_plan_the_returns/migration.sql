-- CreateTable
CREATE TABLE "return_plan" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "status" TEXT NOT NULL,
    "input" JSONB NOT NULL,
    "input_hash" TEXT NOT NULL,
    "result" JSONB,
    "solver" TEXT,
    "objective" BIGINT,
    "bound" BIGINT,
    "wall_ms" INTEGER,
    "ordered_by" UUID NOT NULL,
    "ordered_at" TIMESTAMPTZ(3) NOT NULL,
    "finished_at" TIMESTAMPTZ(3),

    CONSTRAINT "return_plan_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "return_task" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "on_day" DATE NOT NULL,
    "collect_on" DATE NOT NULL,
    "lines" JSONB NOT NULL,
    "state" TEXT NOT NULL,
    "sequence" INTEGER NOT NULL DEFAULT 0,
    "changed_by" UUID NOT NULL,
    "changed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "return_task_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "calendar_feed" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "calendar_feed_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateIndex
CREATE INDEX "return_plan_company_id_project_id_supplier_id_ordered_at_idx" ON "return_plan"("company_id", "project_id", "supplier_id", "ordered_at");

-- CreateIndex
CREATE INDEX "return_task_company_id_project_id_state_on_day_idx" ON "return_task"("company_id", "project_id", "state", "on_day");

-- CreateIndex
CREATE UNIQUE INDEX "calendar_feed_token_hash_key" ON "calendar_feed"("token_hash");

-- AddForeignKey
ALTER TABLE "return_plan" ADD CONSTRAINT "return_plan_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "return_plan" ADD CONSTRAINT "return_plan_company_id_supplier_id_fkey" FOREIGN KEY ("company_id", "supplier_id") REFERENCES "hire_supplier"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "return_plan" ADD CONSTRAINT "return_plan_company_id_ordered_by_fkey" FOREIGN KEY ("company_id", "ordered_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "return_task" ADD CONSTRAINT "return_task_company_id_project_id_plan_id_fkey" FOREIGN KEY ("company_id", "project_id", "plan_id") REFERENCES "return_plan"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "return_task" ADD CONSTRAINT "return_task_company_id_changed_by_fkey" FOREIGN KEY ("company_id", "changed_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calendar_feed" ADD CONSTRAINT "calendar_feed_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calendar_feed" ADD CONSTRAINT "calendar_feed_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['return_plan', 'return_task', 'calendar_feed'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
END $$;
GRANT SELECT, INSERT, UPDATE ON return_plan, return_task, calendar_feed TO shutterwright_app;

ALTER TABLE return_plan ADD CONSTRAINT return_plan_status CHECK (status IN ('waiting', 'ready', 'failed')),
  ADD CONSTRAINT return_plan_bound CHECK (bound <= objective);
ALTER TABLE return_task ADD CONSTRAINT return_task_kind CHECK (kind IN ('call', 'load', 'collect')),
  ADD CONSTRAINT return_task_state CHECK (state IN ('open', 'done', 'withdrawn')),
  ADD CONSTRAINT return_task_days CHECK (on_day <= collect_on);
-- A second acceptance of the same return finds the first one.
CREATE UNIQUE INDEX return_task_once ON return_task (company_id, project_id, plan_id, collect_on, kind) WHERE state <> 'withdrawn';

CREATE FUNCTION door_find_feed(wanted_hash text)
  RETURNS TABLE (company_id uuid, project_id uuid)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT f.company_id, f.project_id FROM calendar_feed f JOIN person p ON p.company_id = f.company_id AND p.id = f.person_id
        WHERE f.token_hash = wanted_hash AND f.revoked_at IS NULL AND p.is_active $$;

-- The worker lays out its own tables; where it has not run yet, it finds what waits once it does.
CREATE FUNCTION queue_return_plan(company uuid, project uuid, plan uuid) RETURNS void
  LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF EXISTS (SELECT FROM pg_namespace WHERE nspname = 'graphile_worker') THEN
    PERFORM graphile_worker.add_job('computeReturnPlan', json_build_object('companyId', company, 'projectId', project, 'planId', plan), job_key := plan::text, max_attempts := 3);
  END IF;
END $$;
CREATE FUNCTION return_plans_waiting() RETURNS TABLE (company_id uuid, project_id uuid, id uuid)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT company_id, project_id, id FROM return_plan WHERE status = 'waiting' AND ordered_at < now() - interval '2 minutes' ORDER BY ordered_at LIMIT 20 $$;
REVOKE ALL ON FUNCTION door_find_feed, queue_return_plan, return_plans_waiting FROM PUBLIC;
GRANT EXECUTE ON FUNCTION door_find_feed, queue_return_plan, return_plans_waiting TO shutterwright_app;
