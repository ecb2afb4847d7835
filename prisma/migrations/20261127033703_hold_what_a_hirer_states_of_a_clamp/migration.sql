-- AlterTable
ALTER TABLE "clamp_kind" ADD COLUMN     "arm_modulus_cm3" DOUBLE PRECISION,
ADD COLUMN     "arm_stress_n_mm2" DOUBLE PRECISION,
ADD COLUMN     "capacity_by_span" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "wedge_pull_kn" DOUBLE PRECISION;
