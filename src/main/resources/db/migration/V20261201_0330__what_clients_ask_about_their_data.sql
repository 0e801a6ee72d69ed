-- Consent taken back after the visit, as a record of its own: the words that were confirmed are sealed, when and how stand open.
create table withdrawal (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    taken_back_at timestamp with time zone not null,
    language varchar(35) not null,
    body text not null,
    constraint withdrawal_visit_once unique (visit_id)
);

-- What a client asks about her data; the due date is a month from the day it came.
create table rights_request (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    submission uuid not null,
    kind varchar(16) not null,
    made_at timestamp with time zone not null,
    due_on date not null,
    body text not null,
    closed_at timestamp with time zone,
    closed_by uuid,
    answer text,
    version integer not null,
    constraint rights_request_submission unique (submission)
);
create index rights_request_client on rights_request (client_id);
create index withdrawal_client on withdrawal (client_id);
