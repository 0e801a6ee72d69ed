-- A time in which the server was away while a test at the bench ran: its clock was not watched then, and the record says so.
create table bench_gap (
    id uuid primary key,
    ran_millis bigint not null,                -- the server's counter when it went away: see bench_clock
    from_at timestamp with time zone not null,
    to_at timestamp with time zone not null
);
