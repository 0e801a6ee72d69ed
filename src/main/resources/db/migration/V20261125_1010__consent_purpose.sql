-- A client signs before a service and, by itself, before a skin test; each has its own row of versions.
alter table signed_consent add column purpose varchar(16) default 'service' not null;
alter table signed_consent drop constraint signed_consent_version_once;
alter table signed_consent add constraint signed_consent_version_once unique (visit_id, purpose, version_no);
