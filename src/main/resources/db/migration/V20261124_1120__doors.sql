-- A link opens one visit's door. Only SHA-256 of the token, the cookie and the code are kept.
create table invitation (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    token_hash varchar(64) not null,
    issued_by varchar(64) not null,
    issued_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    revoked_at timestamp with time zone,
    way varchar(16) not null,
    wrong_tries integer not null,
    locked_at timestamp with time zone,
    constraint invitation_token_once unique (token_hash)
);
create index invitation_by_visit on invitation (visit_id, issued_at);

create table door (
    id uuid primary key,
    invitation_id uuid not null references invitation (id),
    visit_id uuid not null references visit (id),
    cookie_hash varchar(64) not null,
    language varchar(35) not null,
    opened_at timestamp with time zone not null,
    tries integer not null,
    began boolean not null,
    proved_by_code boolean not null,
    closed_at timestamp with time zone,
    constraint door_cookie_once unique (cookie_hash)
);
create index door_by_visit on door (visit_id);

-- A code read out or mailed lets a second browser see what the first one answered.
create table door_code (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    code_hash varchar(64) not null,
    mailed boolean not null,
    made_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    tries integer not null,
    used_at timestamp with time zone
);
create index door_code_by_visit on door_code (visit_id, made_at);
