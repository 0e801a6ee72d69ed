-- Which other service a client asked for whose own is off; sealed, since what is asked for instead tells something of the answers.
create table service_wish (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    said_at timestamp with time zone not null,
    body text not null
);
create index service_wish_visit on service_wish (visit_id);
