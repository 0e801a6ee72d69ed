-- Mails on their way. The sealed body is cleared once the mail has left; the row stays as the record that it did.
create table outbox (
    id uuid primary key,
    client_id uuid not null,
    visit_id uuid not null,
    kind varchar(32) not null,
    language varchar(35) not null,
    body text,
    made_at timestamp with time zone not null,
    due_at timestamp with time zone not null,
    tries integer not null,
    sent_at timestamp with time zone,
    given_up_at timestamp with time zone
);
create index outbox_by_due on outbox (due_at);
