ALTER TABLE "project" ADD COLUMN "column_gear" JSONB;

-- A task is one supplier's; the plan it comes from may be for several.
ALTER TABLE "return_task" ADD COLUMN "supplier_id" UUID;
UPDATE return_task t SET supplier_id = p.supplier_id FROM return_plan p WHERE p.company_id = t.company_id AND p.project_id = t.project_id AND p.id = t.plan_id;
ALTER TABLE "return_task" ALTER COLUMN "supplier_id" SET NOT NULL;
ALTER TABLE "return_task" ADD CONSTRAINT "return_task_company_id_supplier_id_fkey" FOREIGN KEY ("company_id", "supplier_id") REFERENCES "hire_supplier"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
DROP INDEX return_task_once;
CREATE UNIQUE INDEX return_task_once ON return_task (company_id, project_id, plan_id, supplier_id, collect_on) WHERE kind = 'call' AND state = 'open';

ALTER TABLE "return_plan" DROP CONSTRAINT "return_plan_company_id_supplier_id_fkey";
DROP INDEX "return_plan_company_id_project_id_supplier_id_ordered_at_idx";
ALTER TABLE "return_plan" DROP COLUMN "supplier_id";
CREATE INDEX "return_plan_company_id_project_id_ordered_at_idx" ON "return_plan"("company_id", "project_id", "ordered_at");
-- Plans made before are laid out for one supplier and are not read any more; their tasks stand until a new plan is accepted.
UPDATE return_plan SET status = 'failed', result = NULL, objective = NULL, bound = NULL;
