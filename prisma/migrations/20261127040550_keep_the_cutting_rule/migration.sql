-- AlterTable
ALTER TABLE "project" ADD COLUMN     "cutting_rule" JSONB;
