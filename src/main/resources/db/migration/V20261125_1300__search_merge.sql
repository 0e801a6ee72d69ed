-- Two records of one person become one: the one that goes away points to the one that stays, and keeps its own data key,
-- so that nothing sealed has to be sealed again.
alter table client add column merged_into uuid;
alter table client add column merged_at timestamp with time zone;
alter table client add column merged_by uuid;
alter table client add constraint client_merged_into foreign key (merged_into) references client (id);
create index client_by_merged on client (merged_into);
create index client_by_name on client (family_name, given_name);

-- The beginnings by which a client is found: words of the name, of the e-mail, and every tail of the telephone number.
-- first2 and first4 are looked up as equal, which every database's index does alike whatever its collation.
create table client_word (
    client_id uuid not null references client (id),
    word varchar(64) not null,
    first2 varchar(8) not null,
    first4 varchar(16) not null,
    primary key (client_id, word)
);
create index client_word_by_first4 on client_word (first4, word);
create index client_word_by_first2 on client_word (first2, word);
