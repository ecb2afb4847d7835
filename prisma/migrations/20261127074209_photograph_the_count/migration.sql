-- CreateTable
CREATE TABLE "gear_count_photo" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "count_id" UUID NOT NULL,
    "content_type" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,
    "added_by_id" UUID NOT NULL,

    CONSTRAINT "gear_count_photo_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateIndex
CREATE INDEX "gear_count_photo_company_id_project_id_count_id_idx" ON "gear_count_photo"("company_id", "project_id", "count_id");

-- AddForeignKey
ALTER TABLE "gear_count_photo" ADD CONSTRAINT "gear_count_photo_company_id_project_id_count_id_fkey" FOREIGN KEY ("company_id", "project_id", "count_id") REFERENCES "gear_count"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_count_photo" ADD CONSTRAINT "gear_count_photo_company_id_added_by_id_fkey" FOREIGN KEY ("company_id", "added_by_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE gear_count_photo ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_company ON gear_count_photo USING (company_id = app_company()) WITH CHECK (company_id = app_company());
GRANT SELECT, INSERT ON gear_count_photo TO shutterwright_app;
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON gear_count_photo FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
ALTER TABLE gear_count_photo ADD CONSTRAINT gear_count_photo_kind CHECK (content_type IN ('image/jpeg', 'image/png', 'image/webp')),
  ADD CONSTRAINT gear_count_photo_size CHECK (octet_length(bytes) BETWEEN 1 AND 4194304);
