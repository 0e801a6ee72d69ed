-- What staff found out about a medicine's name that no list knows, for all clients. Taken back, it stays to be read.
create table look_up (
    id uuid primary key,
    submission varchar(64) not null,           -- a repeated tap makes one
    made_at timestamp with time zone not null,
    made_by uuid not null,
    body text not null,                        -- name, meaning and source, sealed with the salon's own key
    withdrawn_at timestamp with time zone,
    withdrawn_by uuid,
    withdrawn_why text,                        -- sealed
    version integer not null,
    constraint look_up_submission unique (submission)
);
