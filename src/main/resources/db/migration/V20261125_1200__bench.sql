-- What the hairdresser tried with hands and clock. A row is struck out, never taken away.
create table bench_test (
    id uuid primary key,
    client_id uuid not null,
    visit_id uuid not null,
    kind varchar(32) not null,
    state varchar(16) not null,                -- MADE, RUNNING, ENDED
    submission varchar(64) not null,           -- a repeated tap makes one test
    made_at timestamp with time zone not null,
    made_by uuid not null,
    started_at timestamp with time zone,
    started_ran bigint,                        -- the server's counters at the start, ms: see bench_clock
    started_steady bigint,
    wait_seconds integer not null,             -- how long it takes; 0 where nothing is waited for
    ended_at timestamp with time zone,
    ended_by uuid,
    lasted_ran bigint,
    lasted_steady bigint,
    body text not null,                        -- what was measured, sealed with the client's key
    told text not null,                        -- treatments the client had told when it was made, sealed
    struck_at timestamp with time zone,
    struck_by uuid,
    struck_why text,                           -- sealed
    version integer not null,
    constraint bench_test_visit foreign key (visit_id) references visit (id),
    constraint bench_test_client foreign key (client_id) references client (id),
    constraint bench_test_submission unique (visit_id, submission)
);
create index bench_test_by_client on bench_test (client_id, made_at);
create index bench_test_by_visit on bench_test (visit_id, made_at);
create index bench_test_running on bench_test (state);

create table bench_seen (
    id uuid primary key,
    test_id uuid not null,
    client_id uuid not null,
    submission varchar(64) not null,
    seen_at timestamp with time zone not null,
    seen_by uuid not null,
    ran_millis bigint not null,                -- since the start, ms
    body text not null,                        -- which tuft and what, sealed
    struck_at timestamp with time zone,
    struck_by uuid,
    struck_why text,
    constraint bench_seen_test foreign key (test_id) references bench_test (id),
    constraint bench_seen_submission unique (test_id, submission)
);
create index bench_seen_by_test on bench_seen (test_id, ran_millis);

create table bench_photo (
    id uuid primary key,
    test_id uuid not null,
    client_id uuid not null,
    taken_at timestamp with time zone not null,
    taken_by uuid not null,
    media_type varchar(32) not null,
    body text not null,                        -- sealed
    constraint bench_photo_test foreign key (test_id) references bench_test (id)
);
create index bench_photo_by_test on bench_photo (test_id, taken_at);

-- One row: how long the server has run in all, and what the wall clock says besides. No wall clock can move it.
create table bench_clock (
    id integer primary key,
    ran_millis bigint not null,
    steady_millis bigint not null,
    wall timestamp with time zone not null
);
