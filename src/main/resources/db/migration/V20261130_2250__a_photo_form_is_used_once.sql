-- A form by which a photo was sent: the photo may be taken back, its form stays used, so that no old page stores it again.
create table photo_form (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    submission uuid not null,
    form_of varchar(64) not null,              -- what it is of, as a code under the client's key: to be counted, not read
    constraint photo_form_submission unique (submission)
);
create index photo_form_visit on photo_form (visit_id);
insert into photo_form (id, visit_id, submission, form_of) select id, visit_id, submission, 'before' from sent_photo;
