package foretress.salon;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** A named person has read all that a client reads in a language, and stands for it. It holds until it is taken back. */
@Entity
@Table(name = "language_review")
class LanguageReview extends Stored {
    private String language;
    private String reader;
    /** What was read, as {@link ClientSentences#marks} marks it: path and mark, a line each. */
    @Column(columnDefinition = "text") private String sentences;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "made_by") private UUID madeBy;
    @Column(name = "taken_back_at") private Instant takenBackAt;

    protected LanguageReview() {}

    /** Marks as they are kept. */
    static String written(Map<String, String> marks) {
        return marks.entrySet().stream().map(mark -> mark.getKey() + " " + mark.getValue())
            .collect(Collectors.joining("\n"));
    }

    /** @param sentences as {@link #written} writes them */
    LanguageReview(String language, String reader, String sentences, UUID madeBy, Instant madeAt) {
        super(language, reader, sentences, madeBy, madeAt);
        this.language = language;
        this.reader = reader;
        this.sentences = sentences;
        this.madeBy = madeBy;
        this.madeAt = madeAt;
    }

    /** Those that hold, the newest first. */
    static List<LanguageReview> holding() {
        return list("takenBackAt is null order by madeAt desc, id");
    }

    static Optional<LanguageReview> of(String language) {
        return LanguageReview
            .<LanguageReview>list("language = ?1 and takenBackAt is null order by madeAt desc, id", language)
            .stream().findFirst();
    }

    void takeBack(Instant now) {
        takenBackAt = ending(madeAt, now);
    }

    String language() {
        return language;
    }

    String reader() {
        return reader;
    }

    Instant madeAt() {
        return madeAt;
    }

    /** Path to mark. */
    Map<String, String> marks() {
        return Arrays.stream(sentences.split("\n")).map(line -> line.split(" ")).filter(parts -> parts.length == 2)
            .collect(Collectors.toMap(parts -> parts[0], parts -> parts[1]));
    }
}
