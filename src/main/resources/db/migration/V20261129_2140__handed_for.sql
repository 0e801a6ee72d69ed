-- What the salon's tablet was handed over for, whether staff asked who the client is, and the mail that carries a link: earlier
-- links end when it has left, not before.
alter table invitation add column handed_for varchar(16);
alter table invitation add column vouched boolean default false not null;
alter table invitation add column mail_id uuid;
create index invitation_by_mail on invitation (mail_id);
