-- CreateTable
CREATE TABLE "gear_count" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "locked_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,

    CONSTRAINT "gear_count_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "gear_count_line" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "count_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "counted" INTEGER NOT NULL,
    "expected" INTEGER NOT NULL,
    "loss_price" BIGINT,
    "currency" TEXT,
    "settled_at" TIMESTAMPTZ(3),
    "settled_by_id" UUID,
    "settled_as" TEXT,
    "reason" TEXT,
    "movement_id" UUID,

    CONSTRAINT "gear_count_line_pkey" PRIMARY KEY ("company_id","project_id","count_id","item_id")
);

-- AddForeignKey
ALTER TABLE "gear_count" ADD CONSTRAINT "gear_count_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_count" ADD CONSTRAINT "gear_count_company_id_place_id_fkey" FOREIGN KEY ("company_id", "place_id") REFERENCES "gear_place"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_count" ADD CONSTRAINT "gear_count_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_count_line" ADD CONSTRAINT "gear_count_line_company_id_project_id_count_id_fkey" FOREIGN KEY ("company_id", "project_id", "count_id") REFERENCES "gear_count"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_count_line" ADD CONSTRAINT "gear_count_line_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_count_line" ADD CONSTRAINT "gear_count_line_company_id_settled_by_id_fkey" FOREIGN KEY ("company_id", "settled_by_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_count_line" ADD CONSTRAINT "gear_count_line_company_id_movement_id_fkey" FOREIGN KEY ("company_id", "movement_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['gear_count', 'gear_count_line'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
END $$;
-- A locked count stays as it was locked; only how a difference was settled is added.
GRANT SELECT, INSERT ON gear_count TO shutterwright_app;
GRANT SELECT, INSERT, UPDATE (settled_at, settled_by_id, settled_as, reason, movement_id) ON gear_count_line TO shutterwright_app;
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON gear_count FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
ALTER TABLE gear_count_line ADD CONSTRAINT gear_count_line_counted CHECK (counted >= 0 AND expected >= 0),
  ADD CONSTRAINT gear_count_line_price CHECK ((loss_price IS NULL) = (currency IS NULL)),
  ADD CONSTRAINT gear_count_line_settled CHECK ((settled_at IS NULL) = (settled_as IS NULL) AND (settled_as IS NULL OR settled_as IN ('accepted', 'found')));
