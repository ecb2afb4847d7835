-- CreateTable
CREATE TABLE "gear_panel" (
    "company_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "width_mm" DOUBLE PRECISION NOT NULL,
    "height_mm" DOUBLE PRECISION NOT NULL,
    "thickness_mm" DOUBLE PRECISION NOT NULL,
    "film_faces" INTEGER NOT NULL,
    "sheet_batch" TEXT,
    "cut_from_id" UUID,
    "made_at" TIMESTAMPTZ(3) NOT NULL,
    "sheet_cost" BIGINT NOT NULL DEFAULT 0,
    "labour_cost" BIGINT NOT NULL DEFAULT 0,
    "sundry_cost" BIGINT NOT NULL DEFAULT 0,
    "currency" TEXT NOT NULL,

    CONSTRAINT "gear_panel_pkey" PRIMARY KEY ("company_id","item_id")
);

-- CreateTable
CREATE TABLE "gear_panel_event" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "happened_at" TIMESTAMPTZ(3) NOT NULL,
    "arrived_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,
    "reason" TEXT,
    "amount" BIGINT NOT NULL DEFAULT 0,
    "event_id" UUID,
    "movement_id" UUID,

    CONSTRAINT "gear_panel_event_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "gear_form_set" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "gear_form_set_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "gear_set_panel" (
    "company_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "set_id" UUID NOT NULL,
    "face" TEXT NOT NULL,

    CONSTRAINT "gear_set_panel_pkey" PRIMARY KEY ("company_id","item_id")
);

-- CreateTable
CREATE TABLE "gear_assignment" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "set_id" UUID NOT NULL,
    "column_id" UUID NOT NULL,
    "assigned_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,
    "cut_event_id" UUID,
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "gear_assignment_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "gear_shortfall" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "about" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "column_id" UUID NOT NULL,
    "site_event_id" UUID,
    "item_id" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,
    "noticed_at" TIMESTAMPTZ(3) NOT NULL,
    "settled_at" TIMESTAMPTZ(3),
    "settled_by_id" UUID,
    "settled_as" TEXT,
    "reason" TEXT,
    "movement_id" UUID,

    CONSTRAINT "gear_shortfall_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateIndex
CREATE INDEX "gear_panel_event_company_id_item_id_idx" ON "gear_panel_event"("company_id", "item_id");

-- CreateIndex
CREATE UNIQUE INDEX "gear_set_panel_company_id_set_id_face_key" ON "gear_set_panel"("company_id", "set_id", "face");

-- CreateIndex
CREATE INDEX "gear_assignment_company_id_project_id_column_id_idx" ON "gear_assignment"("company_id", "project_id", "column_id");

-- CreateIndex
CREATE INDEX "gear_shortfall_company_id_project_id_column_id_idx" ON "gear_shortfall"("company_id", "project_id", "column_id");

-- AddForeignKey
ALTER TABLE "gear_panel" ADD CONSTRAINT "gear_panel_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_panel" ADD CONSTRAINT "gear_panel_company_id_cut_from_id_fkey" FOREIGN KEY ("company_id", "cut_from_id") REFERENCES "gear_panel"("company_id", "item_id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_panel_event" ADD CONSTRAINT "gear_panel_event_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_panel"("company_id", "item_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_panel_event" ADD CONSTRAINT "gear_panel_event_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_panel_event" ADD CONSTRAINT "gear_panel_event_company_id_movement_id_fkey" FOREIGN KEY ("company_id", "movement_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_panel_event" ADD CONSTRAINT "gear_panel_event_company_id_event_id_fkey" FOREIGN KEY ("company_id", "event_id") REFERENCES "gear_panel_event"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_form_set" ADD CONSTRAINT "gear_form_set_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_set_panel" ADD CONSTRAINT "gear_set_panel_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_panel"("company_id", "item_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_set_panel" ADD CONSTRAINT "gear_set_panel_company_id_project_id_set_id_fkey" FOREIGN KEY ("company_id", "project_id", "set_id") REFERENCES "gear_form_set"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_assignment" ADD CONSTRAINT "gear_assignment_company_id_project_id_set_id_fkey" FOREIGN KEY ("company_id", "project_id", "set_id") REFERENCES "gear_form_set"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_assignment" ADD CONSTRAINT "gear_assignment_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_assignment" ADD CONSTRAINT "gear_assignment_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_assignment" ADD CONSTRAINT "gear_assignment_company_id_project_id_cut_event_id_fkey" FOREIGN KEY ("company_id", "project_id", "cut_event_id") REFERENCES "site_event"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_shortfall" ADD CONSTRAINT "gear_shortfall_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_shortfall" ADD CONSTRAINT "gear_shortfall_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_shortfall" ADD CONSTRAINT "gear_shortfall_company_id_project_id_site_event_id_fkey" FOREIGN KEY ("company_id", "project_id", "site_event_id") REFERENCES "site_event"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_shortfall" ADD CONSTRAINT "gear_shortfall_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_shortfall" ADD CONSTRAINT "gear_shortfall_company_id_settled_by_id_fkey" FOREIGN KEY ("company_id", "settled_by_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_shortfall" ADD CONSTRAINT "gear_shortfall_company_id_movement_id_fkey" FOREIGN KEY ("company_id", "movement_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['gear_panel', 'gear_panel_event', 'gear_form_set', 'gear_set_panel', 'gear_assignment', 'gear_shortfall'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
END $$;
GRANT SELECT, INSERT ON gear_panel, gear_panel_event TO shutterwright_app;
GRANT SELECT, INSERT, UPDATE ON gear_form_set TO shutterwright_app;
GRANT SELECT, INSERT, DELETE ON gear_set_panel TO shutterwright_app;
-- What was assigned or missing stays as it was said; only how it ended is added.
GRANT SELECT, INSERT, UPDATE (withdrawn_at) ON gear_assignment TO shutterwright_app;
GRANT SELECT, INSERT, UPDATE (settled_at, settled_by_id, settled_as, reason, movement_id) ON gear_shortfall TO shutterwright_app;

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON gear_panel FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON gear_panel_event FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();

ALTER TABLE gear_panel ADD CONSTRAINT gear_panel_size CHECK (width_mm BETWEEN 20 AND 4000 AND height_mm BETWEEN 20 AND 30000 AND thickness_mm BETWEEN 3 AND 60),
  ADD CONSTRAINT gear_panel_faces CHECK (film_faces IN (1, 2)),
  ADD CONSTRAINT gear_panel_cost CHECK (sheet_cost >= 0 AND labour_cost >= 0 AND sundry_cost >= 0),
  ADD CONSTRAINT gear_panel_parent CHECK (cut_from_id <> item_id);
ALTER TABLE gear_panel_event ADD CONSTRAINT gear_panel_event_kind CHECK (kind IN ('repaired', 'turned', 'cut down', 'demoted', 'scrapped', 'withdrawn')),
  ADD CONSTRAINT gear_panel_event_withdrawal CHECK ((kind = 'withdrawn') = (event_id IS NOT NULL)),
  ADD CONSTRAINT gear_panel_event_reason CHECK (reason IS NOT NULL OR kind NOT IN ('scrapped', 'demoted', 'withdrawn')),
  ADD CONSTRAINT gear_panel_event_amount CHECK (amount >= 0);
ALTER TABLE gear_set_panel ADD CONSTRAINT gear_set_panel_face CHECK (face IN ('A', 'B', 'C', 'D'));
ALTER TABLE gear_shortfall ADD CONSTRAINT gear_shortfall_about CHECK (about IN ('not in the ledger', 'gone on') AND kind IN ('stood', 'clamped', 'stripped')),
  ADD CONSTRAINT gear_shortfall_quantity CHECK (quantity > 0),
  ADD CONSTRAINT gear_shortfall_settled CHECK ((settled_at IS NULL) = (settled_as IS NULL) AND (settled_as IS NULL OR settled_as IN ('added', 'dismissed', 'gone')));
CREATE UNIQUE INDEX gear_form_set_name ON gear_form_set (company_id, project_id, lower(name)) WHERE retired_at IS NULL;
CREATE UNIQUE INDEX gear_assignment_of_column ON gear_assignment (company_id, project_id, column_id) WHERE withdrawn_at IS NULL;
CREATE UNIQUE INDEX gear_panel_event_withdrawn_once ON gear_panel_event (company_id, event_id) WHERE event_id IS NOT NULL;

-- Nothing larger comes out of something smaller, whichever way it lies, nor thicker out of thinner.
CREATE FUNCTION gear_panel_fits_parent() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.cut_from_id IS NOT NULL AND NOT EXISTS (SELECT FROM gear_panel p WHERE p.company_id = NEW.company_id AND p.item_id = NEW.cut_from_id
    AND NEW.thickness_mm <= p.thickness_mm AND least(NEW.width_mm, NEW.height_mm) <= least(p.width_mm, p.height_mm)
    AND greatest(NEW.width_mm, NEW.height_mm) <= greatest(p.width_mm, p.height_mm)) THEN
    RAISE EXCEPTION 'panel % does not fit into %', NEW.item_id, NEW.cut_from_id USING ERRCODE = 'check_violation', CONSTRAINT = 'gear_panel_cut_down';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER fits_parent BEFORE INSERT ON gear_panel FOR EACH ROW EXECUTE FUNCTION gear_panel_fits_parent();
