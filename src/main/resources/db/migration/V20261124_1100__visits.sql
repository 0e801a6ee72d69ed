-- Clients and their booked appointments. Names, contact and birth date are plain so that lists and search work;
-- nothing here says why a test is owed.
create table client (
    id uuid primary key,
    given_name varchar(200) not null,
    family_name varchar(200) not null,
    search varchar(1000) not null,
    birth_date date,
    birth_date_confirmed boolean not null,
    email varchar(254),
    phone varchar(40),
    language varchar(35) not null,
    created_at timestamp with time zone not null,
    version integer not null
);

create table visit (
    id uuid primary key,
    submission varchar(64) not null,
    client_id uuid not null references client (id),
    stylist_id uuid not null,
    wall_time timestamp not null,
    zone varchar(64) not null,
    starts_at timestamp with time zone not null,
    state varchar(16) not null,
    created_at timestamp with time zone not null,
    standing_code varchar(32),
    answered_at timestamp with time zone,
    signed_at timestamp with time zone,
    owed_by timestamp with time zone,
    owed_what varchar(32),
    version integer not null,
    constraint visit_submission_once unique (submission)
);
create index visit_by_start on visit (starts_at);
create index visit_by_client on visit (client_id);

create table booked_service (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    place integer not null,
    service_id varchar(64) not null,
    step_ids varchar(500) not null
);
create index booked_service_by_visit on booked_service (visit_id);

-- A promise is a named person's; one open promise of a kind for a visit, so open_as is cleared once it is kept.
create table task (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    kind varchar(32) not null,
    open_as varchar(80),
    owner_id uuid,
    due_at timestamp with time zone not null,
    made_at timestamp with time zone not null,
    acknowledged_at timestamp with time zone,
    acknowledged_by uuid,
    version integer not null,
    constraint task_open_once unique (open_as)
);
create index task_by_visit on task (visit_id);
