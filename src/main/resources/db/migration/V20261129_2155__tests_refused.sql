-- Which of the tests owed the client does not want; sealed, since the kind of test tells something of the answers.
create table test_refusal (
    id uuid primary key,
    visit_id uuid not null references visit (id),
    client_id uuid not null references client (id),
    said_at timestamp with time zone not null,
    body text not null
);
create index test_refusal_visit on test_refusal (visit_id);
