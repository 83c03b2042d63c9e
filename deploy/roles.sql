-- The roles and the empty database, once, as PostgreSQL's administrator. The container of docker-compose.yml runs this by
-- itself while its volume is empty; on a server of your own, with both passwords in the environment:
--   psql -v ON_ERROR_STOP=1 -f deploy/roles.sql
-- The owner migrates the tables. The application owns none, so that it can't switch off what guards them; what it may do is
-- granted at every start.

\getenv owner_password LABVOLATILITY_OWNER_PASSWORD
\getenv application_password LABVOLATILITY_APPLICATION_PASSWORD

CREATE ROLE labvolatility_owner LOGIN PASSWORD :'owner_password';
CREATE ROLE labvolatility_application LOGIN PASSWORD :'application_password';

CREATE DATABASE labvolatility OWNER labvolatility_owner;
REVOKE ALL ON DATABASE labvolatility FROM PUBLIC;
GRANT CONNECT ON DATABASE labvolatility TO labvolatility_application;
