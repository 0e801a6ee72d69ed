-- Letters that do not come apart (l with stroke, o with stroke, sharp s, ae) are folded now: all words are written anew at start.
delete from client_word;
