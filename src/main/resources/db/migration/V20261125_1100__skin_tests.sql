-- The short visit at which a test is put on.
create table test_visit (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    starts_at timestamp with time zone not null,
    tufts boolean not null,
    sequence_no integer not null,
    booked_by uuid not null,
    booked_at timestamp with time zone not null,
    cancelled_at timestamp with time zone,
    open_as uuid,
    constraint test_visit_open_once unique (open_as)
);

-- A skin test as it was put on. When it may be read is plain, so that lists know; what it was made of and under which
-- medicines is sealed.
create table skin_test (
    id uuid primary key,
    submission uuid not null,
    client_id uuid not null references client (id),
    visit_id uuid not null references visit (id),
    line_version uuid not null references product_line (id),
    consent_id uuid not null references signed_consent (id),
    applied_at timestamp with time zone not null,
    applied_by uuid not null,
    readable_from timestamp with time zone not null,
    reminded_at timestamp with time zone,
    body text not null,
    constraint skin_test_submission_once unique (submission)
);
create index skin_test_by_client on skin_test (client_id);
create index skin_test_by_reading on skin_test (readable_from);

-- What the client told of it and what staff read, never changed; a slip of the finger is marked as one, with a reason.
create table skin_test_entry (
    id uuid primary key,
    submission uuid not null,
    test_id uuid not null references skin_test (id),
    client_id uuid not null references client (id),
    kind varchar(16) not null,
    made_at timestamp with time zone not null,
    made_by uuid,
    body text not null,
    error_at timestamp with time zone,
    error_by uuid,
    error_reason text,
    constraint skin_test_entry_submission_once unique (submission)
);
create index skin_test_entry_by_test on skin_test_entry (test_id);

create table skin_test_photo (
    id uuid primary key,
    entry_id uuid not null references skin_test_entry (id),
    client_id uuid not null references client (id),
    made_at timestamp with time zone not null,
    body text not null
);
create index skin_test_photo_by_entry on skin_test_photo (entry_id);

-- A consent names product and shade; it serves one test.
create table skin_test_agreed (
    consent_id uuid primary key references signed_consent (id),
    visit_id uuid not null references visit (id),
    line_id uuid not null,
    shade varchar(200) not null,
    used_by uuid
);

-- Links on which a client tells how the skin looks; only their hashes are kept.
create table aftercare_link (
    id uuid primary key,
    test_id uuid not null references skin_test (id),
    token_hash varchar(64) not null,
    made_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    constraint aftercare_link_token_once unique (token_hash)
);
