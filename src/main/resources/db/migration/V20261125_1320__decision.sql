-- What a named person decided about each booked service, on which assessment and under which signature. Written once; a later
-- decision is a new row. The body (reasons, conditions) is sealed with the client's key.
create table decision (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    version_no integer not null,
    submission uuid not null,
    assessment_id uuid not null,
    consent_id uuid,
    outcome varchar(24) not null,              -- proceed, proceed-with-changes, postpone, decline: the lightest of the services
    decided_at timestamp with time zone not null,
    decided_by uuid not null,
    body text not null,
    constraint decision_visit foreign key (visit_id) references visit (id),
    constraint decision_client foreign key (client_id) references client (id),
    constraint decision_assessment foreign key (assessment_id) references assessment (id),
    constraint decision_submission_once unique (submission),
    constraint decision_version_once unique (visit_id, version_no)
);

-- A booked service that became another one, or lost a step, before the decision: what was booked and what is planned now.
create table adapted_service (
    id uuid primary key,
    visit_id uuid not null,
    place integer not null,
    from_service varchar(64) not null,
    from_steps varchar(500) not null,
    to_service varchar(64) not null,
    to_steps varchar(500) not null,
    adapted_at timestamp with time zone not null,
    adapted_by uuid not null,
    constraint adapted_service_visit foreign key (visit_id) references visit (id)
);
create index adapted_service_by_visit on adapted_service (visit_id, adapted_at);

-- What was done and used. It is the hair's history for the next visit. The body is sealed with the client's key.
create table closing (
    id uuid primary key,
    visit_id uuid not null,
    client_id uuid not null,
    submission uuid not null,
    closed_at timestamp with time zone not null,
    closed_by uuid not null,
    body text not null,
    constraint closing_visit foreign key (visit_id) references visit (id),
    constraint closing_client foreign key (client_id) references client (id),
    constraint closing_visit_once unique (visit_id),
    constraint closing_submission_once unique (submission)
);
create index closing_by_client on closing (client_id);

-- What desk and client may know of the decision: that the visit does not take place as booked, and until when; never why.
alter table visit add column postponed boolean default false not null;
alter table visit add column postponed_until date;

-- A link opened on the salon's own tablet, handed to the client over the counter: the door behind it is as good as a code read out.
alter table invitation add column handed boolean default false not null;
