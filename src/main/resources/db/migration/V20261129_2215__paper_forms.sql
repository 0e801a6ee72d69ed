-- Answers given on the printed form and typed in by staff: the paper itself, sealed, and which answers came from it.
create table paper_form (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    signed_on date not null,
    typed_at timestamp with time zone not null,
    typed_by uuid not null,
    media_type varchar(64) not null,
    body text not null,
    constraint paper_form_visit foreign key (visit_id) references visit (id),
    constraint paper_form_client foreign key (client_id) references client (id),
    constraint paper_form_once unique (visit_id)
);
alter table topic_answers add column typed_from uuid;
