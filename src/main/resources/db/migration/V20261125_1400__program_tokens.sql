-- Tokens of programs that ask over the API. Of the token itself only the hash is kept.
create table program_token (
    id uuid primary key,
    name text not null,
    scopes text not null,
    token_sha256 varchar(64) not null,
    made_by uuid not null references staff (id),
    made_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    revoked_at timestamp with time zone,
    last_used_on date,
    version integer not null,
    constraint program_token_once unique (token_sha256)
);
