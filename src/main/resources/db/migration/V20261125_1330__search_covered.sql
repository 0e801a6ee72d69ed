-- A search reads nothing but an index: on an encrypted file every row that is fetched is a page decrypted. One letter has an
-- index of its own.
alter table client_word add column first1 varchar(4) default '' not null;
update client_word set first1 = substring(word from 1 for 1);
drop index client_word_by_first4;
drop index client_word_by_first2;
create index client_word_by_first4 on client_word (first4, word, client_id);
create index client_word_by_first2 on client_word (first2, word, client_id);
create index client_word_by_first1 on client_word (first1, word, client_id);
