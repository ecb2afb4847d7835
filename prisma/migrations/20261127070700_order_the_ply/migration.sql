-- CreateTable
CREATE TABLE "gear_material" (
    "company_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "use" TEXT NOT NULL,
    "material" TEXT NOT NULL,
    "length_mm" INTEGER NOT NULL,
    "width_mm" INTEGER,

    CONSTRAINT "gear_material_pkey" PRIMARY KEY ("company_id","item_id")
);

-- CreateTable
CREATE TABLE "buying_rule" (
    "company_id" UUID NOT NULL,
    "lead_days" INTEGER NOT NULL,
    "making_days" INTEGER NOT NULL,
    "waste" INTEGER NOT NULL,
    "changed_at" TIMESTAMPTZ(3) NOT NULL,
    "changed_by_id" UUID NOT NULL,

    CONSTRAINT "buying_rule_pkey" PRIMARY KEY ("company_id")
);

-- CreateTable
CREATE TABLE "material_order" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "supplier" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "ordered_on" DATE NOT NULL,
    "wanted_on" DATE NOT NULL,
    "currency" TEXT NOT NULL,
    "note" TEXT,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,

    CONSTRAINT "material_order_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "material_order_line" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,
    "price_each" BIGINT,

    CONSTRAINT "material_order_line_pkey" PRIMARY KEY ("company_id","project_id","order_id","item_id")
);

-- CreateTable
CREATE TABLE "material_receipt" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "number" TEXT,
    "received_on" DATE NOT NULL,
    "happened_at" TIMESTAMPTZ(3) NOT NULL,
    "reason" TEXT,
    "reverses_id" UUID,
    "movement_id" UUID,
    "arrived_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,

    CONSTRAINT "material_receipt_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "material_receipt_line" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "receipt_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "taken" INTEGER NOT NULL,
    "short" INTEGER NOT NULL,
    "refused" INTEGER NOT NULL,

    CONSTRAINT "material_receipt_line_pkey" PRIMARY KEY ("company_id","project_id","receipt_id","item_id")
);

-- CreateTable
CREATE TABLE "material_order_end" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "ended_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,

    CONSTRAINT "material_order_end_pkey" PRIMARY KEY ("company_id","project_id","order_id")
);

-- CreateIndex
CREATE INDEX "material_receipt_company_id_project_id_order_id_idx" ON "material_receipt"("company_id", "project_id", "order_id");

-- AddForeignKey
ALTER TABLE "gear_material" ADD CONSTRAINT "gear_material_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "buying_rule" ADD CONSTRAINT "buying_rule_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "buying_rule" ADD CONSTRAINT "buying_rule_company_id_changed_by_id_fkey" FOREIGN KEY ("company_id", "changed_by_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_order" ADD CONSTRAINT "material_order_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_order" ADD CONSTRAINT "material_order_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_order_line" ADD CONSTRAINT "material_order_line_company_id_project_id_order_id_fkey" FOREIGN KEY ("company_id", "project_id", "order_id") REFERENCES "material_order"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_order_line" ADD CONSTRAINT "material_order_line_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_receipt" ADD CONSTRAINT "material_receipt_company_id_project_id_order_id_fkey" FOREIGN KEY ("company_id", "project_id", "order_id") REFERENCES "material_order"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_receipt" ADD CONSTRAINT "material_receipt_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_receipt" ADD CONSTRAINT "material_receipt_company_id_movement_id_fkey" FOREIGN KEY ("company_id", "movement_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "material_receipt" ADD CONSTRAINT "material_receipt_company_id_project_id_reverses_id_fkey" FOREIGN KEY ("company_id", "project_id", "reverses_id") REFERENCES "material_receipt"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "material_receipt_line" ADD CONSTRAINT "material_receipt_line_company_id_project_id_receipt_id_fkey" FOREIGN KEY ("company_id", "project_id", "receipt_id") REFERENCES "material_receipt"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_receipt_line" ADD CONSTRAINT "material_receipt_line_company_id_project_id_order_id_item__fkey" FOREIGN KEY ("company_id", "project_id", "order_id", "item_id") REFERENCES "material_order_line"("company_id", "project_id", "order_id", "item_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_order_end" ADD CONSTRAINT "material_order_end_company_id_project_id_order_id_fkey" FOREIGN KEY ("company_id", "project_id", "order_id") REFERENCES "material_order"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material_order_end" ADD CONSTRAINT "material_order_end_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['gear_material', 'buying_rule', 'material_order', 'material_order_line', 'material_receipt', 'material_receipt_line', 'material_order_end'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
  FOREACH name IN ARRAY ARRAY['gear_material', 'material_order', 'material_order_line', 'material_receipt', 'material_receipt_line', 'material_order_end'] LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_rewriting()', name);
  END LOOP;
END $$;
GRANT SELECT, INSERT ON gear_material, material_order, material_order_line, material_receipt, material_receipt_line, material_order_end TO shutterwright_app;
GRANT SELECT, INSERT, UPDATE ON buying_rule TO shutterwright_app;

-- Sheets and timber are counted like other gear; what is gathered for a column and what is cut up are movements of their own.
ALTER TABLE gear_item DROP CONSTRAINT gear_item_family,
  ADD CONSTRAINT gear_item_family CHECK (family IN ('clamp set', 'clamp bar', 'wedge', 'prop', 'panel', 'sheet', 'timber', 'other'));
ALTER TABLE gear_movement DROP CONSTRAINT gear_movement_kind,
  ADD CONSTRAINT gear_movement_kind CHECK (kind IN ('opening', 'delivered', 'returned', 'moved', 'gathered', 'stood', 'clamped',
    'stripped', 'cleaned', 'made', 'cut up', 'cut down', 'lost', 'found', 'scrapped', 'settled', 'reversed'));

ALTER TABLE gear_material ADD CONSTRAINT gear_material_use CHECK (use IN ('sheet', 'backing', 'fillet')),
  ADD CONSTRAINT gear_material_size CHECK (length_mm BETWEEN 1 AND 20000 AND (use = 'sheet') = (width_mm IS NOT NULL) AND (width_mm IS NULL OR width_mm BETWEEN 1 AND 6000));
CREATE UNIQUE INDEX gear_material_once ON gear_material (company_id, use, lower(material), length_mm, width_mm) NULLS NOT DISTINCT;
ALTER TABLE buying_rule ADD CONSTRAINT buying_rule_days CHECK (lead_days BETWEEN 0 AND 120 AND making_days BETWEEN 0 AND 60),
  ADD CONSTRAINT buying_rule_waste CHECK (waste BETWEEN 0 AND 10000);
ALTER TABLE material_order ADD CONSTRAINT material_order_days CHECK (wanted_on >= ordered_on);
ALTER TABLE material_order_line ADD CONSTRAINT material_order_line_pieces CHECK (quantity BETWEEN 1 AND 1000000),
  ADD CONSTRAINT material_order_line_price CHECK (price_each >= 0);
ALTER TABLE material_receipt ADD CONSTRAINT material_receipt_reversal CHECK ((reverses_id IS NULL) = (number IS NOT NULL) AND (reverses_id IS NULL OR reason IS NOT NULL));
CREATE UNIQUE INDEX material_receipt_reversed_once ON material_receipt (company_id, project_id, reverses_id) WHERE reverses_id IS NOT NULL;
ALTER TABLE material_receipt_line ADD CONSTRAINT material_receipt_line_pieces
  CHECK (taken BETWEEN 0 AND 1000000 AND short BETWEEN 0 AND 1000000 AND refused BETWEEN 0 AND 1000000 AND taken + short + refused > 0);
ALTER TABLE material_order_end ADD CONSTRAINT material_order_end_kind CHECK (kind IN ('cancelled', 'closed'));

-- What stands against a receipt is decided while its order is held, so that of two at once the second sees the first.
CREATE FUNCTION material_receipt_stands() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended(NEW.order_id::text, 0));
  IF EXISTS (SELECT FROM material_order_end WHERE company_id = NEW.company_id AND project_id = NEW.project_id AND order_id = NEW.order_id) AND NEW.reverses_id IS NULL THEN
    RAISE EXCEPTION 'order % has ended', NEW.order_id USING ERRCODE = 'check_violation', CONSTRAINT = 'material_receipt_ended';
  END IF;
  IF NEW.received_on < (SELECT ordered_on FROM material_order WHERE company_id = NEW.company_id AND project_id = NEW.project_id AND id = NEW.order_id) THEN
    RAISE EXCEPTION 'receipt % is before its order', NEW.id USING ERRCODE = 'check_violation', CONSTRAINT = 'material_receipt_before_order';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER stands BEFORE INSERT ON material_receipt FOR EACH ROW EXECUTE FUNCTION material_receipt_stands();

-- More than was ordered is taken only with a reason; reversed receipts do not count.
CREATE FUNCTION material_receipt_within() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (SELECT reason FROM material_receipt WHERE company_id = NEW.company_id AND project_id = NEW.project_id AND id = NEW.receipt_id) IS NULL
    AND (NEW.refused > 0 OR NEW.taken > 0 AND
      (SELECT sum(l.taken) FROM material_receipt_line l WHERE l.company_id = NEW.company_id AND l.project_id = NEW.project_id AND l.order_id = NEW.order_id AND l.item_id = NEW.item_id
        AND NOT EXISTS (SELECT FROM material_receipt r WHERE r.company_id = l.company_id AND r.project_id = l.project_id AND r.reverses_id = l.receipt_id))
      > (SELECT quantity FROM material_order_line WHERE company_id = NEW.company_id AND project_id = NEW.project_id AND order_id = NEW.order_id AND item_id = NEW.item_id)) THEN
    RAISE EXCEPTION 'receipt % needs a reason', NEW.receipt_id USING ERRCODE = 'check_violation', CONSTRAINT = 'material_receipt_reason';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER within AFTER INSERT ON material_receipt_line DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION material_receipt_within();

CREATE FUNCTION material_order_may_end() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended(NEW.order_id::text, 0));
  IF NEW.kind = 'cancelled' AND EXISTS (SELECT FROM material_receipt r WHERE r.company_id = NEW.company_id AND r.project_id = NEW.project_id AND r.order_id = NEW.order_id
    AND r.reverses_id IS NULL AND NOT EXISTS (SELECT FROM material_receipt b WHERE b.company_id = r.company_id AND b.project_id = r.project_id AND b.reverses_id = r.id)) THEN
    RAISE EXCEPTION 'something came of order %', NEW.order_id USING ERRCODE = 'check_violation', CONSTRAINT = 'material_order_received';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER may_end BEFORE INSERT ON material_order_end FOR EACH ROW EXECUTE FUNCTION material_order_may_end();
