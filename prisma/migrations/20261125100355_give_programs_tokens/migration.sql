-- CreateTable
CREATE TABLE "access_token" (
    "company_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "access_token_pkey" PRIMARY KEY ("company_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "access_token_token_hash_key" ON "access_token"("token_hash");

-- AddForeignKey
ALTER TABLE "access_token" ADD CONSTRAINT "access_token_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE access_token ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_company ON access_token USING (company_id = app_company()) WITH CHECK (company_id = app_company());
GRANT SELECT, INSERT, UPDATE ON access_token TO shutterwright_app;

CREATE FUNCTION door_find_token(wanted_hash text)
  RETURNS TABLE (company_id uuid, id uuid, person_id uuid, session_epoch int)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT t.company_id, t.id, t.person_id, p.session_epoch
        FROM access_token t JOIN person p ON p.company_id = t.company_id AND p.id = t.person_id
        WHERE t.token_hash = wanted_hash AND t.revoked_at IS NULL AND t.expires_at > now() AND p.is_active $$;
REVOKE ALL ON FUNCTION door_find_token FROM PUBLIC;
GRANT EXECUTE ON FUNCTION door_find_token TO shutterwright_app;
