-- A closing that was corrected is a new version; the earlier ones stay to be read.
alter table closing drop constraint closing_visit_once;
alter table closing add column version_no integer default 1 not null;
alter table closing add constraint closing_version_once unique (visit_id, version_no);

-- Photos of the hair, before and after, kept with the client's leave. The picture is drawn anew and sealed.
create table hair_photo (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    moment varchar(8) not null,                -- BEFORE, AFTER
    taken_at timestamp with time zone not null,
    taken_by uuid not null,
    body text not null,
    constraint hair_photo_visit foreign key (visit_id) references visit (id)
);
create index hair_photo_by_visit on hair_photo (visit_id, taken_at);
