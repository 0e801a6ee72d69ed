-- fingerprint of the master key that wrapped a client's data key; null on keys from before there could be two
alter table client_key add column wrapped_by varchar(32);
