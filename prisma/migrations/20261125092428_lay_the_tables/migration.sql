-- CreateTable
CREATE TABLE "column_lift" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "mark_id" UUID NOT NULL,
    "grid_ref" TEXT NOT NULL,
    "grid_x_id" UUID,
    "grid_y_id" UUID,
    "from_level_id" UUID NOT NULL,
    "to_level_id" UUID NOT NULL,
    "shape" TEXT NOT NULL,
    "width_mm" DOUBLE PRECISION NOT NULL,
    "depth_mm" DOUBLE PRECISION NOT NULL,
    "form_height_mm" INTEGER,
    "headed_by" TEXT NOT NULL DEFAULT 'slab',
    "concrete" TEXT,
    "main_bars" TEXT,
    "remarks" TEXT,
    "version" INTEGER NOT NULL DEFAULT 0,
    "removed_at" TIMESTAMPTZ(3),
    "done" INTEGER NOT NULL DEFAULT 0,
    "flagged" BOOLEAN NOT NULL DEFAULT false,
    "state_seq" BIGINT NOT NULL DEFAULT 0,
    "state" JSONB,

    CONSTRAINT "column_lift_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "site_event" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "column_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "payload" JSONB NOT NULL,
    "reason" TEXT,
    "happened_at" TIMESTAMPTZ(3) NOT NULL,
    "arrived_at" TIMESTAMPTZ(3) NOT NULL,
    "by_person_id" UUID NOT NULL,
    "standing" TEXT NOT NULL,

    CONSTRAINT "site_event_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "change_line" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "detail" JSONB NOT NULL,
    "column_ids" UUID[],

    CONSTRAINT "change_line_pkey" PRIMARY KEY ("company_id","project_id","seq")
);

-- CreateTable
CREATE TABLE "company" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "company_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "is_active" BOOLEAN NOT NULL DEFAULT true,
    "session_epoch" INTEGER NOT NULL DEFAULT 0,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "invitation" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "invited_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "sign_in_attempt" (
    "id" BIGSERIAL NOT NULL,
    "key" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_attempt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "project" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "site" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "working_days" INTEGER[],
    "progress_rule" JSONB NOT NULL,
    "shutter_rule" JSONB NOT NULL,
    "pour_conditions" JSONB NOT NULL,
    "starts_on" DATE,
    "last_seq" BIGINT NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 0,
    "archived_at" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "project_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateTable
CREATE TABLE "level" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "elevation_mm" INTEGER NOT NULL,
    "slab_depth_mm" INTEGER NOT NULL DEFAULT 0,
    "beam_depth_mm" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "level_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "grid_line" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "axis" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "offset_mm" INTEGER NOT NULL,

    CONSTRAINT "grid_line_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "column_mark" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "shape" TEXT NOT NULL,
    "width_mm" DOUBLE PRECISION NOT NULL,
    "depth_mm" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "column_mark_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "schedule_import" (
    "company_id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "file_name" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "layout" TEXT NOT NULL,
    "file" BYTEA NOT NULL,
    "created" INTEGER NOT NULL,
    "changed" INTEGER NOT NULL,
    "imported_by" UUID NOT NULL,
    "imported_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "schedule_import_pkey" PRIMARY KEY ("company_id","project_id","id")
);

-- CreateTable
CREATE TABLE "clamp_kind" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "min_size_mm" INTEGER NOT NULL,
    "max_size_mm" INTEGER NOT NULL,
    "side_capacity_kn" DOUBLE PRECISION NOT NULL,
    "bar_length_mm" INTEGER NOT NULL,
    "bar_depth_mm" INTEGER NOT NULL,
    "bar_thickness_mm" INTEGER NOT NULL,
    "weight_kg" DOUBLE PRECISION NOT NULL,
    "source" TEXT NOT NULL,
    "is_example" BOOLEAN NOT NULL,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "clamp_kind_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateIndex
CREATE INDEX "column_lift_company_id_project_id_from_level_id_idx" ON "column_lift"("company_id", "project_id", "from_level_id");

-- CreateIndex
CREATE INDEX "site_event_company_id_project_id_column_id_seq_idx" ON "site_event"("company_id", "project_id", "column_id", "seq");

-- CreateIndex
CREATE UNIQUE INDEX "site_event_company_id_project_id_seq_key" ON "site_event"("company_id", "project_id", "seq");

-- CreateIndex
CREATE UNIQUE INDEX "person_id_key" ON "person"("id");

-- CreateIndex
CREATE UNIQUE INDEX "person_email_key" ON "person"("email");

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_hash_key" ON "invitation"("token_hash");

-- CreateIndex
CREATE INDEX "sign_in_attempt_key_at_idx" ON "sign_in_attempt"("key", "at");

-- CreateIndex
CREATE UNIQUE INDEX "project_company_id_name_key" ON "project"("company_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "level_company_id_project_id_name_key" ON "level"("company_id", "project_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "level_company_id_project_id_elevation_mm_key" ON "level"("company_id", "project_id", "elevation_mm");

-- CreateIndex
CREATE UNIQUE INDEX "grid_line_company_id_project_id_axis_name_key" ON "grid_line"("company_id", "project_id", "axis", "name");

-- CreateIndex
CREATE UNIQUE INDEX "column_mark_company_id_project_id_name_key" ON "column_mark"("company_id", "project_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "clamp_kind_company_id_name_key" ON "clamp_kind"("company_id", "name");

-- AddForeignKey
ALTER TABLE "column_lift" ADD CONSTRAINT "column_lift_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "column_lift" ADD CONSTRAINT "column_lift_company_id_project_id_mark_id_fkey" FOREIGN KEY ("company_id", "project_id", "mark_id") REFERENCES "column_mark"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "column_lift" ADD CONSTRAINT "column_lift_company_id_project_id_grid_x_id_fkey" FOREIGN KEY ("company_id", "project_id", "grid_x_id") REFERENCES "grid_line"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "column_lift" ADD CONSTRAINT "column_lift_company_id_project_id_grid_y_id_fkey" FOREIGN KEY ("company_id", "project_id", "grid_y_id") REFERENCES "grid_line"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "column_lift" ADD CONSTRAINT "column_lift_company_id_project_id_from_level_id_fkey" FOREIGN KEY ("company_id", "project_id", "from_level_id") REFERENCES "level"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "column_lift" ADD CONSTRAINT "column_lift_company_id_project_id_to_level_id_fkey" FOREIGN KEY ("company_id", "project_id", "to_level_id") REFERENCES "level"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "site_event" ADD CONSTRAINT "site_event_company_id_project_id_column_id_fkey" FOREIGN KEY ("company_id", "project_id", "column_id") REFERENCES "column_lift"("company_id", "project_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "site_event" ADD CONSTRAINT "site_event_company_id_by_person_id_fkey" FOREIGN KEY ("company_id", "by_person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "change_line" ADD CONSTRAINT "change_line_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "change_line" ADD CONSTRAINT "change_line_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "person" ADD CONSTRAINT "person_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_company_id_invited_by_fkey" FOREIGN KEY ("company_id", "invited_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "project" ADD CONSTRAINT "project_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "level" ADD CONSTRAINT "level_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "grid_line" ADD CONSTRAINT "grid_line_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "column_mark" ADD CONSTRAINT "column_mark_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "schedule_import" ADD CONSTRAINT "schedule_import_company_id_project_id_fkey" FOREIGN KEY ("company_id", "project_id") REFERENCES "project"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "schedule_import" ADD CONSTRAINT "schedule_import_company_id_imported_by_fkey" FOREIGN KEY ("company_id", "imported_by") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "clamp_kind" ADD CONSTRAINT "clamp_kind_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
