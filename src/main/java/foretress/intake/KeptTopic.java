package foretress.intake;

import foretress.running.Asked;
import foretress.vault.SealedRow;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** One version of one topic's answers, sealed. Never changed: saying it differently adds a version. */
@Entity
@Table(name = "topic_answers")
class KeptTopic extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    /** Names the topic under the client's key: which topics were asked tells of answers. */
    private String topic;
    private int version;
    private String language;
    @Column(name = "saved_at") private Instant savedAt;
    private String submission;
    /** Ids of the questions that were put, with spaces between, sealed; absent in old rows, where the whole topic was. */
    @Column(columnDefinition = "text") private String asked;
    /** The member of staff who put them; absent where the client answered alone. */
    @Column(name = "asked_by") private UUID askedBy;
    /** The paper form it was typed from; absent where it was not. */
    @Column(name = "typed_from") private UUID typedFrom;

    protected KeptTopic() {}

    /**
     * @param topic its name under the client's key
     * @param staff who put the questions; empty where the client answered alone
     * @param asked seals the ids of the questions that were put
     * @param seal seals what was said
     */
    KeptTopic(Visit visit, String topic, int version, String language, String submission, Optional<UUID> staff,
        Instant now, UnaryOperator<String> asked, UnaryOperator<String> seal) {
        super(visit.client.id, seal, topic, language, submission, now);
        this.visitId = visit.id;
        this.topic = topic;
        this.version = (int) counted(version);
        this.language = language;
        this.savedAt = now;
        this.submission = submission;
        this.asked = sealed("asked", asked);
        this.askedBy = staff.orElse(null);
    }

    /** It was typed from that paper form. */
    void typedFrom(UUID paper) {
        typedFrom = paper;
    }

    static List<KeptTopic> newest(UUID visitId) {
        Map<String, KeptTopic> newest = new LinkedHashMap<>();
        all(visitId).forEach(one -> newest.merge(one.topic, one, (a, b) -> b.version > a.version ? b : a));
        return newest.values().stream().sorted(Comparator.comparing(KeptTopic::savedAt).thenComparing(k -> k.version))
            .toList();
    }

    /** One page that was sent: its topic and the questions on it, without what was said. */
    record Sent(UUID id, UUID clientId, String topic, String asked) {
        /** The ids of its questions, sealed; absent in old rows, where the whole topic counts as put. */
        Optional<String> sealed() {
            return Optional.ofNullable(asked);
        }

        String place() {
            return "topic_answers.asked." + id;
        }
    }

    Sent sent() {
        return new Sent(id, clientId(), topic, asked);
    }

    static List<Sent> sent(UUID visitId) {
        return all(visitId).stream().map(KeptTopic::sent).toList();
    }

    /** Every version of every topic saved by then, the oldest first. */
    static List<KeptTopic> savedBy(UUID visitId, Instant moment) {
        return all(visitId).stream().filter(one -> !one.savedAt.isAfter(moment)).toList();
    }

    Optional<UUID> askedBy() {
        return Optional.ofNullable(askedBy);
    }

    /** Every version of every topic, oldest first. */
    static List<KeptTopic> all(UUID visitId) {
        return Asked.once(question(visitId),
            () -> getEntityManager().createQuery("select t, k from KeptTopic t left join ClientKey k"
                + " on k.clientId = t.clientId where t.visitId = ?1 order by t.savedAt, t.version", Object[].class)
                .setParameter(1, visitId).getResultStream().map(row -> (KeptTopic) row[0]).toList());
    }

    private static Object question(UUID visitId) {
        return List.of(KeptTopic.class, visitId);
    }

    /** Writes it; all there are now, without asking for them. */
    List<KeptTopic> written() {
        List<KeptTopic> all = Stream.concat(all(visitId).stream(), Stream.of(this))
            .sorted(Comparator.comparing(KeptTopic::savedAt).thenComparing(one -> one.version)).toList();
        persistAndFlush();
        known(visitId, all);
        return all;
    }

    /** These are all, though something else was written meanwhile. */
    static void known(UUID visitId, List<KeptTopic> all) {
        Asked.known(question(visitId), all);
    }

    static Optional<KeptTopic> submitted(UUID visitId, String submission) {
        return all(visitId).stream().filter(one -> one.submission.equals(submission)).findFirst();
    }

    static int lastVersion(UUID visitId, String topic) {
        return all(visitId).stream().filter(one -> one.topic.equals(topic)).mapToInt(one -> one.version).max()
            .orElse(0);
    }

    String topic() {
        return topic;
    }

    Instant savedAt() {
        return savedAt;
    }
}
