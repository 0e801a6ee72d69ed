-- What was said outside the store about the audit chain, by mail or on paper. Each stretch begins where the one before it ended, so that
-- of two servers that make one at the same moment only one can.
create table ledger_anchor (
    first_number bigint primary key,
    last_number bigint not null unique,
    made_on date not null,
    head_sha256 varchar(64) not null,
    root_sha256 varchar(64) not null,
    made_at timestamp with time zone not null
);
-- The trail is looked through by time, by record and by person.
create index ledger_entry_by_time on ledger_entry (noted_at);
create index ledger_entry_by_subject on ledger_entry (subject, number);
create index ledger_entry_by_actor on ledger_entry (actor, number);
