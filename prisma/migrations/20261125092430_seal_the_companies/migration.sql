-- The role every query of the app runs under. It owns nothing and cannot bypass row-level security.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'shutterwright_app') THEN
    CREATE ROLE shutterwright_app NOLOGIN NOSUPERUSER NOBYPASSRLS;
  END IF;
EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL;
END $$;
GRANT shutterwright_app TO CURRENT_USER;
GRANT USAGE ON SCHEMA public TO shutterwright_app;

-- The company whose rows this transaction may see; none at all until the gate has named one.
CREATE FUNCTION app_company() RETURNS uuid LANGUAGE sql STABLE
  AS $$ SELECT nullif(current_setting('app.company_id', true), '')::uuid $$;

ALTER TABLE company ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_company ON company USING (id = app_company()) WITH CHECK (id = app_company());
GRANT SELECT, INSERT, UPDATE ON company TO shutterwright_app;

DO $$ DECLARE name text; BEGIN
  FOREACH name IN ARRAY ARRAY['person', 'invitation', 'project', 'level', 'grid_line', 'column_mark', 'schedule_import',
                              'clamp_kind', 'column_lift', 'site_event', 'change_line'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_company ON %I USING (company_id = app_company()) WITH CHECK (company_id = app_company())', name);
  END LOOP;
END $$;
GRANT SELECT, INSERT, UPDATE ON person, invitation, project, clamp_kind, column_lift TO shutterwright_app;
GRANT SELECT, INSERT, UPDATE, DELETE ON level, grid_line, column_mark TO shutterwright_app;
GRANT SELECT, INSERT ON site_event, change_line, schedule_import TO shutterwright_app;

-- What happened on site is never edited, only answered by another event.
CREATE FUNCTION refuse_rewriting() RETURNS trigger LANGUAGE plpgsql
  AS $$ BEGIN RAISE EXCEPTION '% is append-only', TG_TABLE_NAME USING ERRCODE = 'restrict_violation'; END $$;
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON site_event FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON change_line FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON schedule_import FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();

-- Quantities no row may break, whoever writes it.
ALTER TABLE column_lift ADD CONSTRAINT column_lift_size CHECK (width_mm BETWEEN 50 AND 10000 AND depth_mm BETWEEN 50 AND 10000),
  ADD CONSTRAINT column_lift_height CHECK (form_height_mm IS NULL OR form_height_mm BETWEEN 100 AND 30000),
  ADD CONSTRAINT column_lift_shape CHECK (shape IN ('rectangle', 'circle')),
  ADD CONSTRAINT column_lift_levels CHECK (from_level_id <> to_level_id),
  ADD CONSTRAINT column_lift_done CHECK (done BETWEEN 0 AND 63);
ALTER TABLE person ADD CONSTRAINT person_role CHECK (role IN ('owner', 'leading hand', 'office')),
  ADD CONSTRAINT person_email_lower CHECK (email = lower(email));
ALTER TABLE grid_line ADD CONSTRAINT grid_line_axis CHECK (axis IN ('along-x', 'along-y'));
ALTER TABLE site_event ADD CONSTRAINT site_event_standing CHECK (standing IN ('accepted', 'queried'));
-- One column stands at a grid position on a lift, as long as it has not been taken out of the schedule.
CREATE UNIQUE INDEX column_lift_place ON column_lift (company_id, project_id, grid_ref, from_level_id) WHERE removed_at IS NULL;

-- The door: what has to be read before anyone is known. Each function answers one question and nothing else.
ALTER TABLE sign_in_attempt ENABLE ROW LEVEL SECURITY;
CREATE POLICY nobody ON sign_in_attempt USING (false) WITH CHECK (false);

CREATE FUNCTION door_find_person(wanted_email text)
  RETURNS TABLE (company_id uuid, id uuid, password_hash text, is_active boolean, session_epoch int)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT p.company_id, p.id, p.password_hash, p.is_active, p.session_epoch FROM person p WHERE p.email = wanted_email $$;

CREATE FUNCTION door_find_invitation(wanted_hash text)
  RETURNS TABLE (company_id uuid, id uuid, email text, role text, company_name text, inviter_name text, is_open boolean)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT i.company_id, i.id, i.email, i.role, c.name, p.name,
               i.accepted_at IS NULL AND i.revoked_at IS NULL AND i.expires_at > now() AND p.is_active
        FROM invitation i JOIN company c ON c.id = i.company_id
        JOIN person p ON p.company_id = i.company_id AND p.id = i.invited_by
        WHERE i.token_hash = wanted_hash $$;

CREATE FUNCTION door_has_companies() RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT EXISTS (SELECT FROM company) $$;

CREATE FUNCTION door_failures(wanted_key text, minutes int) RETURNS int
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT count(*)::int FROM sign_in_attempt WHERE key = wanted_key AND at > now() - make_interval(mins => minutes) $$;
CREATE FUNCTION door_note_failure(wanted_key text) RETURNS void
  LANGUAGE sql SECURITY DEFINER SET search_path = public
  AS $$ INSERT INTO sign_in_attempt (key) VALUES (wanted_key) $$;
CREATE FUNCTION door_clear_failures(wanted_key text) RETURNS void
  LANGUAGE sql SECURITY DEFINER SET search_path = public
  AS $$ DELETE FROM sign_in_attempt WHERE key = wanted_key $$;
CREATE FUNCTION door_tidy() RETURNS void
  LANGUAGE sql SECURITY DEFINER SET search_path = public
  AS $$ DELETE FROM sign_in_attempt WHERE at < now() - interval '2 days' $$;

REVOKE ALL ON FUNCTION door_find_person, door_find_invitation, door_has_companies, door_failures, door_note_failure,
  door_clear_failures, door_tidy FROM PUBLIC;
GRANT EXECUTE ON FUNCTION door_find_person, door_find_invitation, door_has_companies, door_failures, door_note_failure,
  door_clear_failures, door_tidy TO shutterwright_app;
