-- A return that was called stays as it is; further pieces of the same day make a return of their own, called once.
DROP INDEX return_task_once;
CREATE UNIQUE INDEX return_task_once ON return_task (company_id, project_id, plan_id, collect_on) WHERE kind = 'call' AND state = 'open';
