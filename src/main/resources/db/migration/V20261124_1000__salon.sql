-- The one salon, its staff and their sessions; the clients' keys; the audit chain; what this database is.
create table mark (
    name varchar(64) primary key,
    said text not null
);

create table salon (
    id uuid primary key,
    name text not null,
    address text not null,
    town text not null,
    phone text not null,
    email text not null,
    zone text not null,
    jurisdiction text not null,
    urgent_number text not null,
    paper_size varchar(16) not null,
    languages text not null,
    opening_hours text not null,
    version integer not null
);

create table staff (
    id uuid primary key,
    name text not null,
    login text not null,
    login_folded varchar(128) not null,
    role varchar(16) not null,
    password_hash text,
    active boolean not null,
    created_at timestamp with time zone not null,
    version integer not null,
    constraint staff_login_once unique (login_folded)
);

-- One row a sign-in; deleted when it ends. The cookie names it, encrypted.
create table staff_session (
    id uuid primary key,
    staff_id uuid not null references staff (id),
    begun_at timestamp with time zone not null
);
create index staff_session_by_staff on staff_session (staff_id);

-- A code handed to a person once, to set the first password. Only its hash is kept.
create table set_up_code (
    id uuid primary key,
    code_sha256 varchar(64) not null,
    staff_id uuid references staff (id),          -- none: the owner who sets up the salon
    expires_at timestamp with time zone not null,
    constraint set_up_code_once unique (code_sha256)
);

-- A client's own data key, wrapped by the master key. Deleting the row makes everything sealed with it unreadable for ever.
create table client_key (
    client_id uuid primary key,
    wrapped text not null,
    made_at timestamp with time zone not null
);

-- Who did what to which record, each entry hashed over the one before. Subjects are keyed pseudonyms, never names.
create table ledger_entry (
    number bigint primary key,
    noted_at timestamp with time zone not null,
    actor text not null,
    what text not null,
    subject varchar(64) not null,
    previous_sha256 varchar(64) not null,
    sha256 varchar(64) not null
);
create table ledger_head (
    id integer primary key,
    number bigint not null,
    sha256 varchar(64) not null
);
insert into ledger_head (id, number, sha256) values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');
