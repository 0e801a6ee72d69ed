-- What stood on file of a client before it was corrected, sealed: a correction adds a version and is shown beside the old.
create table client_before (
    id uuid primary key,
    client_id uuid not null references client (id),
    until_at timestamp with time zone not null,
    changed_by varchar(64) not null,
    body text not null
);
create index client_before_client on client_before (client_id);
