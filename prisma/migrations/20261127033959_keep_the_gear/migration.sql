-- CreateTable
CREATE TABLE "gear_item" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "family" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "clamp_kind_id" UUID,
    "bars_each" INTEGER,
    "wedges_each" INTEGER,
    "loss_price" BIGINT,
    "currency" TEXT,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "gear_item_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "gear_place" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "project_id" UUID,
    "column_id" UUID,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "gear_place_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "gear_movement" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGSERIAL NOT NULL,
    "kind" TEXT NOT NULL,
    "project_id" UUID,
    "column_id" UUID,
    "site_event_id" UUID,
    "happened_at" TIMESTAMPTZ(3) NOT NULL,
    "arrived_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,
    "reason" TEXT,
    "reverses_id" UUID,

    CONSTRAINT "gear_movement_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "gear_line" (
    "company_id" UUID NOT NULL,
    "movement_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,

    CONSTRAINT "gear_line_pkey" PRIMARY KEY ("company_id","movement_id","item_id","place_id")
);

-- CreateTable
CREATE TABLE "gear_balance" (
    "company_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "place_kind" TEXT NOT NULL,
    "is_single" BOOLEAN NOT NULL,
    "quantity" INTEGER NOT NULL,

    CONSTRAINT "gear_balance_pkey" PRIMARY KEY ("company_id","item_id","place_id")
);

-- CreateIndex
CREATE INDEX "gear_place_company_id_project_id_idx" ON "gear_place"("company_id", "project_id");

-- CreateIndex
CREATE UNIQUE INDEX "gear_movement_seq_key" ON "gear_movement"("seq");

-- CreateIndex
CREATE INDEX "gear_movement_company_id_project_id_column_id_idx" ON "gear_movement"("company_id", "project_id", "column_id");

-- CreateIndex
CREATE INDEX "gear_movement_company_id_project_id_happened_at_idx" ON "gear_movement"("company_id", "project_id", "happened_at");

-- CreateIndex
CREATE INDEX "gear_line_company_id_item_id_idx" ON "gear_line"("company_id", "item_id");

-- CreateIndex
CREATE INDEX "gear_line_company_id_place_id_idx" ON "gear_line"("company_id", "place_id");

-- CreateIndex
CREATE INDEX "gear_balance_company_id_place_id_idx" ON "gear_balance"("company_id", "place_id");

-- AddForeignKey
ALTER TABLE "gear_item" ADD CONSTRAINT "gear_item_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_item" ADD CONSTRAINT "gear_item_company_id_clamp_kind_id_fkey" FOREIGN KEY ("company_id", "clamp_kind_id") REFERENCES "clamp_kind"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_place" ADD CONSTRAINT "gear_place_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_place" ADD CONSTRAINT "gear_place_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_place" ADD CONSTRAINT "gear_place_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_movement" ADD CONSTRAINT "gear_movement_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_movement" ADD CONSTRAINT "gear_movement_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_movement" ADD CONSTRAINT "gear_movement_company_id_project_id_site_event_id_fkey" FOREIGN KEY ("company_id", "project_id", "site_event_id") REFERENCES "site_event"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_movement" ADD CONSTRAINT "gear_movement_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_movement" ADD CONSTRAINT "gear_movement_company_id_reverses_id_fkey" FOREIGN KEY ("company_id", "reverses_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gear_line" ADD CONSTRAINT "gear_line_company_id_movement_id_fkey" FOREIGN KEY ("company_id", "movement_id") REFERENCES "gear_movement"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_line" ADD CONSTRAINT "gear_line_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_line" ADD CONSTRAINT "gear_line_company_id_place_id_fkey" FOREIGN KEY ("company_id", "place_id") REFERENCES "gear_place"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_balance" ADD CONSTRAINT "gear_balance_company_id_item_id_fkey" FOREIGN KEY ("company_id", "item_id") REFERENCES "gear_item"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gear_balance" ADD CONSTRAINT "gear_balance_company_id_place_id_fkey" FOREIGN KEY ("company_id", "place_id") REFERENCES "gear_place"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['gear_item', 'gear_place', 'gear_movement', 'gear_line', 'gear_balance'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
END $$;
GRANT SELECT, INSERT, UPDATE ON gear_item, gear_place TO shutterwright_app;
GRANT SELECT, INSERT ON gear_movement, gear_line TO shutterwright_app;
-- Balances are the database's own book. FOR UPDATE asks for the right to update some column: this one no row can change.
GRANT SELECT, UPDATE (company_id) ON gear_balance TO shutterwright_app;
GRANT USAGE ON SEQUENCE gear_movement_seq_seq TO shutterwright_app;

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON gear_movement FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON gear_line FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();

ALTER TABLE gear_item ADD CONSTRAINT gear_item_family CHECK (family IN ('clamp set', 'clamp bar', 'wedge', 'prop', 'panel', 'other')),
  ADD CONSTRAINT gear_item_kind CHECK (clamp_kind_id IS NULL OR family IN ('clamp set', 'clamp bar')),
  ADD CONSTRAINT gear_item_parts CHECK ((family = 'clamp set') = (bars_each IS NOT NULL AND wedges_each IS NOT NULL)
    AND coalesce(bars_each, 0) BETWEEN 0 AND 8 AND coalesce(wedges_each, 0) BETWEEN 0 AND 16),
  ADD CONSTRAINT gear_item_loss_price CHECK ((loss_price IS NULL) = (currency IS NULL) AND (loss_price IS NULL OR loss_price >= 0));
ALTER TABLE gear_place ADD CONSTRAINT gear_place_kind
    CHECK (kind IN ('supplier', 'bought', 'yard', 'truck', 'cleaning bay', 'rack', 'column', 'lost', 'scrapped')),
  ADD CONSTRAINT gear_place_project CHECK (CASE WHEN kind IN ('rack', 'cleaning bay', 'column') THEN project_id IS NOT NULL
    WHEN kind = 'truck' THEN true ELSE project_id IS NULL END),
  ADD CONSTRAINT gear_place_column CHECK ((kind = 'column') = (column_id IS NOT NULL));
ALTER TABLE gear_movement ADD CONSTRAINT gear_movement_kind CHECK (kind IN ('opening', 'delivered', 'returned', 'moved', 'stood', 'clamped',
    'stripped', 'cleaned', 'made', 'cut down', 'lost', 'found', 'scrapped', 'settled', 'reversed')),
  ADD CONSTRAINT gear_movement_reversal CHECK ((kind = 'reversed') = (reverses_id IS NOT NULL) AND (kind <> 'reversed' OR reason IS NOT NULL));
ALTER TABLE gear_line ADD CONSTRAINT gear_line_moves CHECK (quantity <> 0);
-- Nothing stands under zero where gear can be picked up. A source stands under zero by what came from it and has not gone back,
-- and a panel comes from one source only, so that it is at one place at most.
ALTER TABLE gear_balance ADD CONSTRAINT gear_balance_there
    CHECK (CASE WHEN place_kind IN ('supplier', 'bought') THEN quantity <= 0 ELSE quantity >= 0 END),
  ADD CONSTRAINT gear_balance_single CHECK (NOT is_single OR (quantity BETWEEN -1 AND 1 AND place_kind <> 'supplier'));

CREATE UNIQUE INDEX gear_item_name ON gear_item (company_id, family, lower(name)) WHERE retired_at IS NULL;
CREATE UNIQUE INDEX gear_item_clamp ON gear_item (company_id, clamp_kind_id, family) WHERE clamp_kind_id IS NOT NULL;
CREATE UNIQUE INDEX gear_place_name ON gear_place (company_id, project_id, kind, lower(name)) NULLS NOT DISTINCT WHERE retired_at IS NULL AND kind <> 'column';
CREATE UNIQUE INDEX gear_place_of_column ON gear_place (company_id, project_id, column_id) WHERE kind = 'column';
CREATE UNIQUE INDEX gear_place_one_of ON gear_place (company_id, kind) WHERE kind IN ('bought', 'lost', 'scrapped');
CREATE UNIQUE INDEX gear_movement_reversed_once ON gear_movement (company_id, reverses_id) WHERE reverses_id IS NOT NULL;

-- One step for all lines of a statement, in one order, so that two writers wait for each other instead of locking crosswise.
CREATE FUNCTION gear_keep_balances() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  INSERT INTO gear_balance (company_id, item_id, place_id, place_kind, is_single, quantity)
    SELECT DISTINCT l.company_id, l.item_id, l.place_id, p.kind, i.family = 'panel', 0 FROM added l
    JOIN gear_item i ON i.company_id = l.company_id AND i.id = l.item_id
    JOIN gear_place p ON p.company_id = l.company_id AND p.id = l.place_id
    WHERE NOT EXISTS (SELECT FROM gear_balance b WHERE b.company_id = l.company_id AND b.item_id = l.item_id AND b.place_id = l.place_id)
    ORDER BY 1, 2, 3 ON CONFLICT DO NOTHING;
  PERFORM FROM gear_balance b
    WHERE EXISTS (SELECT FROM added l WHERE l.company_id = b.company_id AND l.item_id = b.item_id AND l.place_id = b.place_id)
    ORDER BY company_id, item_id, place_id FOR UPDATE;
  UPDATE gear_balance b SET quantity = b.quantity + s.quantity
    FROM (SELECT company_id, item_id, place_id, sum(quantity)::int quantity FROM added GROUP BY 1, 2, 3) s
    WHERE b.company_id = s.company_id AND b.item_id = s.item_id AND b.place_id = s.place_id;
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION gear_keep_balances FROM PUBLIC;
CREATE TRIGGER keep_balances AFTER INSERT ON gear_line REFERENCING NEW TABLE AS added FOR EACH STATEMENT EXECUTE FUNCTION gear_keep_balances();

CREATE FUNCTION gear_lines_balance() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (SELECT sum(quantity) FROM gear_line WHERE company_id = NEW.company_id AND movement_id = NEW.movement_id AND item_id = NEW.item_id) <> 0 THEN
    RAISE EXCEPTION 'gear movement % does not balance', NEW.movement_id USING ERRCODE = 'check_violation', CONSTRAINT = 'gear_line_zero_sum';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER zero_sum AFTER INSERT ON gear_line DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION gear_lines_balance();

CREATE FUNCTION gear_movement_whole() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT FROM gear_line WHERE company_id = NEW.company_id AND movement_id = NEW.id) THEN
    RAISE EXCEPTION 'gear movement % moves nothing', NEW.id USING ERRCODE = 'check_violation', CONSTRAINT = 'gear_movement_lines';
  END IF;
  IF NEW.reverses_id IS NOT NULL AND (
    EXISTS (SELECT FROM gear_movement WHERE company_id = NEW.company_id AND id = NEW.reverses_id AND reverses_id IS NOT NULL)
    OR EXISTS (SELECT FROM gear_line WHERE company_id = NEW.company_id AND movement_id IN (NEW.id, NEW.reverses_id)
      GROUP BY item_id, place_id HAVING sum(quantity) <> 0)) THEN
    RAISE EXCEPTION 'gear movement % does not mirror %', NEW.id, NEW.reverses_id USING ERRCODE = 'check_violation', CONSTRAINT = 'gear_movement_mirror';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER whole AFTER INSERT ON gear_movement DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION gear_movement_whole();
