-- Who read the drafted words of a language and let it be shown to clients; sentences holds what each one was then.
create table language_review (
    id uuid primary key,
    language varchar(8) not null,
    reader varchar(120) not null,
    sentences text not null,
    made_at timestamp with time zone not null,
    made_by uuid not null,
    taken_back_at timestamp with time zone
);
create index language_review_language on language_review (language);
