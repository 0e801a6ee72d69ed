-- Whether anything of a person is on file is asked of each of these by the person.
create index test_refusal_client on test_refusal (client_id);
create index service_wish_client on service_wish (client_id);
