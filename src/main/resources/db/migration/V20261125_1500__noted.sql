-- What only staff can write down: a dermatologist's letter, a doctor's word, a cut, the band of new growth. A row is struck out,
-- never taken away.
create table noted (
    id uuid primary key,
    client_id uuid not null,
    visit_id uuid not null,
    kind varchar(16) not null,                 -- letter, word, cut, growth
    submission varchar(64) not null,           -- a repeated tap makes one
    noted_at timestamp with time zone not null,
    noted_by uuid not null,
    body text not null,                        -- sealed with the client's key
    told text not null,                        -- the answers a doctor's word is about, sealed
    struck_at timestamp with time zone,
    struck_by uuid,
    struck_why text,                           -- sealed
    version integer not null,
    constraint noted_visit foreign key (visit_id) references visit (id),
    constraint noted_client foreign key (client_id) references client (id),
    constraint noted_submission unique (visit_id, submission)
);
create index noted_by_client on noted (client_id, noted_at);
create index noted_by_visit on noted (visit_id, noted_at);

create table noted_paper (
    id uuid primary key,
    noted_id uuid not null,
    client_id uuid not null,
    kept_at timestamp with time zone not null,
    kept_by uuid not null,
    media_type varchar(32) not null,
    body text not null,                        -- sealed
    constraint noted_paper_noted foreign key (noted_id) references noted (id)
);
create index noted_paper_by_noted on noted_paper (noted_id, kept_at);
