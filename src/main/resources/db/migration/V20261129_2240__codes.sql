-- Nothing outside the vault tells answers apart. Unkeyed hashes of answers could be tried out on a computer; in their place come codes
-- keyed by the client's own key. This file makes room, V20261129_2241 (foretress.vault.Coding, in Java, because it needs the keys)
-- fills it, V20261129_2242 takes the old columns away.
alter table page_shown add column name text;
alter table visit add column told text;
-- Whose key seals what hangs on the visit; it stays when the visit goes over to another record of the same person.
alter table visit add column key_of uuid;
update visit set key_of = client_id;
alter table visit alter column key_of set not null;
alter table task alter column kind set data type text;
alter table read_back rename column answers_sha256 to answers_code;
alter table assessment rename column answers_sha256 to answers_code;
alter table signed_consent rename column answers_sha256 to answers_code;
alter table signed_consent rename column text_sha256 to text_code;
alter table signed_consent rename column pdf_sha256 to pdf_code;

-- Stands in the sealed body.
alter table assessment drop column standing;
alter table decision drop column outcome;

-- An assessment that nothing rests on gives way to the next one. Of those made after every page the newest stays, and what was signed
-- or decided on.
alter table assessment add column held boolean default true not null;
delete from assessment
where id not in (select assessment_id from decision)
  and exists (select 1 from assessment later where later.visit_id = assessment.visit_id and later.assessed_at > assessment.assessed_at)
  and not exists (select 1 from signed_consent s where s.visit_id = assessment.visit_id and s.signed_at <= assessment.assessed_at
    and not exists (select 1 from assessment between_them where between_them.visit_id = assessment.visit_id
      and between_them.assessed_at >= s.signed_at and between_them.assessed_at < assessment.assessed_at));
