-- The salon's sealing keys, newest last in time: a PKCS#12 store each, whose passphrase is a file outside the database; old certificates stay, so that old papers verify.
create table seal_key (
    id uuid primary key,
    made_at timestamp with time zone not null,
    certificate text not null,                 -- X.509, DER in base64; public
    keystore text not null                     -- PKCS#12 in base64
);
-- The sealed paper of a signed document, whose own bytes are its beginning.
create table sealed_paper (
    id uuid primary key,
    client_id uuid not null references client (id),
    document_id uuid not null,
    sealed_at timestamp with time zone not null,
    body text not null,
    constraint sealed_paper_document unique (document_id)
);
