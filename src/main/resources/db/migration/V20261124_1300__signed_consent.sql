-- One row for each signing. Written once; a later signing is a new row that names the one it supersedes.
-- What the client read, the evidence and the document are sealed; the hashes tell nothing and stay readable.
create table signed_consent (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    version_no integer not null,
    supersedes uuid references signed_consent (id),
    submission uuid not null,
    language varchar(35) not null,
    text_version varchar(32) not null,
    text_sha256 varchar(64) not null,
    answers_sha256 varchar(64) not null,
    pdf_sha256 varchar(64) not null,
    rule_set varchar(64) not null,
    mark_kind varchar(16) not null,
    signed_at timestamp with time zone not null,
    file_name varchar(64) not null,
    body text not null,
    evidence text not null,
    pdf text not null,
    constraint signed_consent_submission_once unique (submission),
    constraint signed_consent_version_once unique (visit_id, version_no)
);
create index signed_consent_by_client on signed_consent (client_id);
