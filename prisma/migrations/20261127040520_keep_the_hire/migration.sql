-- CreateTable
CREATE TABLE "hire_supplier" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "place_id" UUID NOT NULL,
    "contact" TEXT,
    "phone" TEXT,
    "email" TEXT,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "hire_supplier_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "hire_terms" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "valid_from" DATE NOT NULL,
    "currency" TEXT NOT NULL,
    "rule" JSONB NOT NULL,
    "recorded_by" UUID NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hire_terms_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "hire_rate" (
    "company_id" UUID NOT NULL,
    "terms_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "supplier_name" TEXT,
    "per_day" BIGINT,
    "per_week" BIGINT,
    "per_month" BIGINT,
    "minimum_days" INTEGER NOT NULL,
    "loss_price" BIGINT,
    "damage_price" BIGINT,
    "cleaning_price" BIGINT,

    CONSTRAINT "hire_rate_pkey" PRIMARY KEY ("company_id","terms_id","item_id")
);

-- CreateTable
CREATE TABLE "hire_docket" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "on_day" DATE NOT NULL,
    "happened_at" TIMESTAMPTZ(3) NOT NULL,
    "name" TEXT,
    "dispatched_on" DATE,
    "until_on" DATE,
    "answers_id" UUID,
    "by_supplier" BOOLEAN NOT NULL DEFAULT false,
    "share" INTEGER,
    "amount" BIGINT,
    "note" TEXT,
    "movement_id" UUID,
    "recorded_by" UUID NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hire_docket_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "hire_docket_line" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "docket_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,
    "short" INTEGER NOT NULL DEFAULT 0,
    "damaged" INTEGER NOT NULL DEFAULT 0,
    "dirty" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "hire_docket_line_pkey" PRIMARY KEY ("company_id","project_id","docket_id","item_id")
);

-- CreateTable
CREATE TABLE "hire_photo" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "docket_id" UUID NOT NULL,
    "content_type" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,
    "added_by" UUID NOT NULL,

    CONSTRAINT "hire_photo_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "hire_invoice" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "issued_on" DATE NOT NULL,
    "from_on" DATE NOT NULL,
    "to_on" DATE NOT NULL,
    "currency" TEXT NOT NULL,
    "lines" JSONB NOT NULL,
    "file_name" TEXT,
    "file" BYTEA,
    "recorded_by" UUID NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hire_invoice_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "hire_query" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "invoice_id" UUID NOT NULL,
    "group_key" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "owner_id" UUID NOT NULL,
    "due_on" DATE NOT NULL,
    "status" TEXT NOT NULL,
    "note" TEXT,
    "changed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hire_query_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "hire_reversal" (
    "company_id" UUID NOT NULL,
    "subject_id" UUID NOT NULL,
    "subject" TEXT NOT NULL,
    "project_id" UUID,
    "reason" TEXT NOT NULL,
    "reversed_by" UUID NOT NULL,
    "reversed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hire_reversal_pkey" PRIMARY KEY ("company_id","subject_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "hire_supplier_company_id_name_key" ON "hire_supplier"("company_id", "name");

-- CreateIndex
CREATE INDEX "hire_docket_company_id_project_id_supplier_id_on_day_idx" ON "hire_docket"("company_id", "project_id", "supplier_id", "on_day");

-- CreateIndex
CREATE INDEX "hire_docket_line_company_id_item_id_idx" ON "hire_docket_line"("company_id", "item_id");

-- CreateIndex
CREATE INDEX "hire_photo_company_id_project_id_docket_id_idx" ON "hire_photo"("company_id", "project_id", "docket_id");

-- CreateIndex
CREATE UNIQUE INDEX "hire_query_company_id_project_id_invoice_id_group_key_key" ON "hire_query"("company_id", "project_id", "invoice_id", "group_key");

-- AddForeignKey
ALTER TABLE "hire_supplier" ADD CONSTRAINT "hire_supplier_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_supplier" ADD CONSTRAINT "hire_supplier_company_id_place_id_fkey" FOREIGN KEY ("company_id", "place_id") REFERENCES "gear_place"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_terms" ADD CONSTRAINT "hire_terms_company_id_supplier_id_fkey" FOREIGN KEY ("company_id", "supplier_id") REFERENCES "hire_supplier"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_terms" ADD CONSTRAINT "hire_terms_company_id_recorded_by_fkey" FOREIGN KEY ("company_id", "recorded_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_rate" ADD CONSTRAINT "hire_rate_company_id_terms_id_fkey" FOREIGN KEY ("company_id", "terms_id") REFERENCES "hire_terms"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_rate" ADD CONSTRAINT "hire_rate_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_docket" ADD CONSTRAINT "hire_docket_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_docket" ADD CONSTRAINT "hire_docket_company_id_supplier_id_fkey" FOREIGN KEY ("company_id", "supplier_id") REFERENCES "hire_supplier"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_docket" ADD CONSTRAINT "hire_docket_company_id_recorded_by_fkey" FOREIGN KEY ("company_id", "recorded_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_docket" ADD CONSTRAINT "hire_docket_company_id_movement_id_fkey" FOREIGN KEY ("company_id", "movement_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "hire_docket" ADD CONSTRAINT "hire_docket_company_id_project_id_answers_id_fkey" FOREIGN KEY ("company_id", "project_id", "answers_id") REFERENCES "hire_docket"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "hire_docket_line" ADD CONSTRAINT "hire_docket_line_company_id_project_id_docket_id_fkey" FOREIGN KEY ("company_id", "project_id", "docket_id") REFERENCES "hire_docket"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_docket_line" ADD CONSTRAINT "hire_docket_line_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_photo" ADD CONSTRAINT "hire_photo_company_id_project_id_docket_id_fkey" FOREIGN KEY ("company_id", "project_id", "docket_id") REFERENCES "hire_docket"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_photo" ADD CONSTRAINT "hire_photo_company_id_added_by_fkey" FOREIGN KEY ("company_id", "added_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_invoice" ADD CONSTRAINT "hire_invoice_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_invoice" ADD CONSTRAINT "hire_invoice_company_id_supplier_id_fkey" FOREIGN KEY ("company_id", "supplier_id") REFERENCES "hire_supplier"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_invoice" ADD CONSTRAINT "hire_invoice_company_id_recorded_by_fkey" FOREIGN KEY ("company_id", "recorded_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_query" ADD CONSTRAINT "hire_query_company_id_project_id_invoice_id_fkey" FOREIGN KEY ("company_id", "project_id", "invoice_id") REFERENCES "hire_invoice"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_query" ADD CONSTRAINT "hire_query_company_id_owner_id_fkey" FOREIGN KEY ("company_id", "owner_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hire_reversal" ADD CONSTRAINT "hire_reversal_company_id_reversed_by_fkey" FOREIGN KEY ("company_id", "reversed_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['hire_supplier', 'hire_terms', 'hire_rate', 'hire_docket', 'hire_docket_line', 'hire_photo', 'hire_invoice',
                              'hire_query', 'hire_reversal'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
  FOREACH name IN ARRAY ARRAY['hire_terms', 'hire_rate', 'hire_docket', 'hire_docket_line', 'hire_photo', 'hire_invoice', 'hire_reversal'] LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_rewriting()', name);
  END LOOP;
END $$;
GRANT SELECT, INSERT, UPDATE ON hire_supplier, hire_query TO shutterwright_app;
GRANT SELECT, INSERT ON hire_terms, hire_rate, hire_docket, hire_docket_line, hire_photo, hire_invoice, hire_reversal TO shutterwright_app;

ALTER TABLE hire_docket ADD CONSTRAINT hire_docket_kind CHECK (kind IN ('order', 'delivery', 'off-hire', 'return', 'yard-count', 'missing',
    'settlement', 'failed-collection', 'stand-down', 'credit')),
  ADD CONSTRAINT hire_docket_days CHECK (until_on IS NULL OR until_on >= on_day),
  ADD CONSTRAINT hire_docket_share CHECK (share IS NULL OR share BETWEEN 0 AND 10000);
ALTER TABLE hire_docket_line ADD CONSTRAINT hire_docket_line_pieces
  CHECK (quantity BETWEEN 0 AND 1000000 AND short BETWEEN 0 AND 1000000 AND damaged BETWEEN 0 AND quantity AND dirty BETWEEN 0 AND quantity);
ALTER TABLE hire_rate ADD CONSTRAINT hire_rate_amounts CHECK (least(per_day, per_week, per_month, loss_price, damage_price, cleaning_price, minimum_days) >= 0);
ALTER TABLE hire_photo ADD CONSTRAINT hire_photo_kind CHECK (content_type IN ('image/jpeg', 'image/png', 'image/webp')),
  ADD CONSTRAINT hire_photo_size CHECK (octet_length(bytes) BETWEEN 1 AND 4194304);
ALTER TABLE hire_invoice ADD CONSTRAINT hire_invoice_days CHECK (from_on <= to_on);
ALTER TABLE hire_query ADD CONSTRAINT hire_query_status CHECK (status IN ('open', 'sent', 'credited', 'accepted'));
ALTER TABLE hire_reversal ADD CONSTRAINT hire_reversal_subject CHECK (subject IN ('docket', 'terms', 'invoice'));
