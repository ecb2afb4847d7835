-- CreateTable
CREATE TABLE "panel_reservation" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "column_id" UUID NOT NULL,
    "face" TEXT NOT NULL,
    "width_mm" INTEGER NOT NULL,
    "height_mm" INTEGER NOT NULL,
    "source" TEXT NOT NULL,
    "item_id" UUID,
    "after_column_id" UUID,
    "after_face" TEXT,
    "cut_down" BOOLEAN NOT NULL,
    "accepted_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_by_id" UUID NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "ended_by_id" UUID,
    "ended_as" TEXT,
    "reason" TEXT,

    CONSTRAINT "panel_reservation_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateIndex
CREATE INDEX "panel_reservation_company_id_project_id_column_id_idx" ON "panel_reservation"("company_id", "project_id", "column_id");

-- AddForeignKey
ALTER TABLE "panel_reservation" ADD CONSTRAINT "panel_reservation_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_reservation" ADD CONSTRAINT "panel_reservation_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_reservation" ADD CONSTRAINT "panel_reservation_company_id_project_id_after_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "after_column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "panel_reservation" ADD CONSTRAINT "panel_reservation_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_panel"("company_id", "item_id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "panel_reservation" ADD CONSTRAINT "panel_reservation_company_id_accepted_by_id_fkey" FOREIGN KEY ("company_id", "accepted_by_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_reservation" ADD CONSTRAINT "panel_reservation_company_id_ended_by_id_fkey" FOREIGN KEY ("company_id", "ended_by_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

ALTER TABLE panel_reservation ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_company ON panel_reservation USING (company_id = app_company()) WITH CHECK (company_id = app_company());
GRANT SELECT, INSERT, UPDATE (item_id, ended_at, ended_by_id, ended_as, reason) ON panel_reservation TO shutterwright_app;

ALTER TABLE panel_reservation ADD CONSTRAINT panel_reservation_face CHECK (face IN ('A', 'B', 'C', 'D') AND (after_face IS NULL OR after_face IN ('A', 'B', 'C', 'D'))),
  ADD CONSTRAINT panel_reservation_size CHECK (width_mm > 0 AND height_mm > 0),
  ADD CONSTRAINT panel_reservation_source CHECK (CASE source WHEN 'panel' THEN item_id IS NOT NULL AND after_column_id IS NULL
    WHEN 'after' THEN after_column_id IS NOT NULL AND after_column_id <> column_id WHEN 'new' THEN after_column_id IS NULL AND NOT cut_down ELSE false END),
  ADD CONSTRAINT panel_reservation_after CHECK ((after_column_id IS NULL) = (after_face IS NULL)),
  ADD CONSTRAINT panel_reservation_ended CHECK ((ended_at IS NULL) = (ended_as IS NULL) AND (ended_as IS NULL OR ended_as IN ('served', 'unused', 'withdrawn', 'superseded', 'fallen'))),
  ADD CONSTRAINT panel_reservation_reason CHECK (reason IS NOT NULL OR ended_as IS NULL OR ended_as NOT IN ('withdrawn', 'fallen'));
-- Each face is spoken for once; a panel goes to one column next, and what comes off a face goes to one face next.
CREATE UNIQUE INDEX panel_reservation_of_face ON panel_reservation (company_id, project_id, column_id, face) WHERE ended_at IS NULL;
CREATE UNIQUE INDEX panel_reservation_of_panel ON panel_reservation (company_id, item_id) WHERE ended_at IS NULL;
CREATE UNIQUE INDEX panel_reservation_of_yield ON panel_reservation (company_id, project_id, after_column_id, after_face) WHERE ended_at IS NULL;

-- Found damaged: out of use until it is repaired.
ALTER TABLE gear_panel_event DROP CONSTRAINT gear_panel_event_kind, DROP CONSTRAINT gear_panel_event_reason,
  ADD CONSTRAINT gear_panel_event_kind CHECK (kind IN ('damaged', 'repaired', 'turned', 'cut down', 'demoted', 'scrapped', 'withdrawn')),
  ADD CONSTRAINT gear_panel_event_reason CHECK (reason IS NOT NULL OR kind NOT IN ('damaged', 'scrapped', 'demoted', 'withdrawn'));
