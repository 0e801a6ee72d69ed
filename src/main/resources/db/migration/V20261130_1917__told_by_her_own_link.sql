-- A reaction that a client told of by her own link: what, when, where, sealed. Struck out it stays to be read, and weighs no more.
create table told_reaction (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    submission uuid not null,                  -- the same form sent twice is one
    told_at timestamp with time zone not null,
    body text not null,
    struck_at timestamp with time zone,
    struck_by uuid,
    struck_why text,                           -- sealed
    version integer not null,
    constraint told_reaction_submission unique (submission)
);
create index told_reaction_client on told_reaction (client_id);

-- A complaint: the client's words, sealed; who confirmed it and answered it, and when.
create table complaint (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    submission uuid not null,
    made_at timestamp with time zone not null,
    acknowledge_by date not null,              -- the last day on which the salon may confirm that it has it
    body text not null,
    acknowledged_at timestamp with time zone,
    acknowledged_by uuid,
    answered_at timestamp with time zone,
    answered_by uuid,
    answer text,                               -- sealed
    version integer not null,
    constraint complaint_submission unique (submission)
);
create index complaint_client on complaint (client_id);

-- What was signed, in a language that staff read: a copy that nobody signed, sealed.
create table consent_copy (
    id uuid primary key,
    client_id uuid not null references client (id),
    consent_id uuid not null references signed_consent (id),
    language varchar(35) not null,
    body text not null,
    constraint consent_copy_one unique (consent_id, language)
);
