-- CreateTable
CREATE TABLE "planned_days" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "column_id" UUID NOT NULL,
    "pour" TEXT,
    "stood_on" DATE,
    "poured_on" DATE,

    CONSTRAINT "planned_days_pkey" PRIMARY KEY ("company_id","project_id","column_id")
);

-- AddForeignKey
ALTER TABLE "planned_days" ADD CONSTRAINT "planned_days_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE planned_days ADD CONSTRAINT planned_days_order CHECK (stood_on IS NULL OR poured_on IS NULL OR stood_on <= poured_on);
ALTER TABLE planned_days ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_company ON planned_days USING (company_id = app_company()) WITH CHECK (company_id = app_company());
GRANT SELECT, INSERT, UPDATE ON planned_days TO shutterwright_app;
