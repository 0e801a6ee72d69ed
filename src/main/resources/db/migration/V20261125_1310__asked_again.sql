-- Which questions a version of a topic put, and who put them: answers with a shelf life are asked again on the day. Empty in
-- older rows, where the page put the whole topic and the client answered it.
alter table topic_answers add column asked text;
alter table topic_answers add column asked_by uuid;
