-- what weighed at a visit still to come before consent to another one was taken back; it stands until the client was asked anew
create table stood_before (
    id uuid primary key,
    client_id uuid not null references client,
    visit_id uuid not null references visit,
    taken_back_at timestamp with time zone not null,
    body text not null
);
create index stood_before_client on stood_before (client_id);
create index stood_before_visit on stood_before (visit_id);
