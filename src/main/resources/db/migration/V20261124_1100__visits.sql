-- Clients and their booked appointments. Names, contact and birth date are plain so that lists and search work;
-- nothing here says why a test is owed.
create table client (
    id uuid primary key,
    given_name text not null,
    family_name text not null,
    search text not null,
    birth_date date,
    birth_date_confirmed boolean not null,
    email text,
    phone text,
    language text not null,
    created_at timestamp with time zone not null,
    version integer not null
);

create table visit (
    id uuid primary key,
    submission text not null,
    client_id uuid not null references client (id),
    stylist_id uuid not null,
    wall_time timestamp not null,
    zone text not null,
    starts_at timestamp with time zone not null,
    state text not null,
    created_at timestamp with time zone not null,
    standing_code text,
    answered_at timestamp with time zone,
    signed_at timestamp with time zone,
    owed_by timestamp with time zone,
    owed_what text,
    version integer not null,
    constraint visit_submission_once unique (submission)
);
create index visit_by_start on visit (starts_at);
create index visit_by_client on visit (client_id);

create table booked_service (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    place integer not null,
    service_id text not null,
    step_ids text not null
);
create index booked_service_by_visit on booked_service (visit_id);

-- A promise is a named person's; one open promise of a kind for a visit, so open_as is cleared once it is kept.
create table task (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    kind text not null,
    open_as text,
    owner_id uuid,
    due_at timestamp with time zone not null,
    made_at timestamp with time zone not null,
    acknowledged_at timestamp with time zone,
    acknowledged_by uuid,
    version integer not null,
    constraint task_open_once unique (open_as)
);
create index task_by_visit on task (visit_id);
