-- A photo that a client sent by her own link before the visit: drawn anew, sealed; so is what it is of. One taken back is gone.
create table sent_photo (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    submission uuid not null,                  -- the same form sent twice is one photo
    sent_at timestamp with time zone not null,
    shows text not null,                       -- sealed: FRONT, SIDE, BACK, BOX, INGREDIENTS
    body text not null,
    small text not null,                       -- sealed: the same, as small as a list shows it
    constraint sent_photo_submission unique (submission)
);
create index sent_photo_visit on sent_photo (visit_id);
