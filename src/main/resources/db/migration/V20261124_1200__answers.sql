-- What a client agreed to, read and said. Rows are added, never changed: a later version supersedes.
create table health_consent (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    said varchar(16) not null,                 -- given, refused, withdrawn
    said_at timestamp with time zone not null,
    language varchar(16) not null,
    notice_version varchar(64) not null,
    notice_sha256 varchar(64) not null,
    constraint health_consent_visit foreign key (visit_id) references visit (id),
    constraint health_consent_client foreign key (client_id) references client (id)
);
create index health_consent_by_visit on health_consent (visit_id, said_at);

create table topic_answers (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    topic varchar(64) not null,
    version integer not null,
    language varchar(16) not null,
    saved_at timestamp with time zone not null,
    submission varchar(64) not null,           -- a repeated tap repeats it, and is kept once
    body text not null,                        -- sealed with the client's key
    constraint topic_answers_visit foreign key (visit_id) references visit (id),
    constraint topic_answers_client foreign key (client_id) references client (id),
    constraint topic_answers_version unique (visit_id, topic, version),
    constraint topic_answers_submission unique (visit_id, submission)
);

create table page_shown (
    id uuid primary key,
    visit_id uuid not null,
    page varchar(64) not null,
    first_at timestamp with time zone not null,
    last_at timestamp with time zone not null,
    constraint page_shown_visit foreign key (visit_id) references visit (id),
    constraint page_shown_once unique (visit_id, page)
);

create table read_back (
    id uuid primary key,
    visit_id uuid not null,
    answers_sha256 varchar(64) not null,       -- of exactly the answers that were read back
    confirmed_at timestamp with time zone not null,
    constraint read_back_visit foreign key (visit_id) references visit (id)
);
create index read_back_by_visit on read_back (visit_id, confirmed_at);

create table assessment (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    assessed_at timestamp with time zone not null,
    rule_set_sha256 varchar(64) not null,
    answers_sha256 varchar(64) not null,
    standing varchar(32) not null,
    body text not null,                        -- facts and findings, sealed with the client's key
    constraint assessment_visit foreign key (visit_id) references visit (id),
    constraint assessment_client foreign key (client_id) references client (id)
);
create index assessment_by_visit on assessment (visit_id, assessed_at);
