package foretress.consent;

import foretress.assessment.Weight;
import foretress.consent.ConsentText.Line;
import foretress.vault.SealedJson;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Copies of what was signed in the languages that staff read. The signed text alone holds; a copy is there to be understood. */
@Singleton
public class ConsentCopies {
    private final SealedJson sealed;

    ConsentCopies(SealedJson sealed) {
        this.sealed = sealed;
    }

    /** A text as it is kept. */
    public record Copy(String language, String title, List<Part> parts) {
        static Copy of(ConsentText text) {
            return new Copy(text.language(), text.title(), text.sections().stream()
                .map(part -> new Part(part.heading(), part.lines().stream().map(Row::of).toList())).toList());
        }
    }

    public record Part(String heading, List<Row> rows) {
        public List<Line> lines() {
            return rows.stream().map(Row::line).toList();
        }
    }

    /** @param weight of a finding; empty for every other line */
    public record Row(Kind kind, String label, String text, Optional<Weight> weight) {
        /** How a line is set; a statement is set as a line with its number. */
        enum Kind {
            TOPIC, PAIR, FINDING, PLAIN
        }

        static Row of(Line line) {
            if (line instanceof Line.Pair pair) {
                return new Row(Kind.PAIR, pair.label(), pair.value(), Optional.empty());
            }
            if (line instanceof Line.Finding finding) {
                return new Row(Kind.FINDING, finding.word(), finding.text(), Optional.of(finding.weight()));
            }
            if (line instanceof Line.Statement statement) {
                return new Row(Kind.PLAIN, "", statement.number() + ". " + statement.text(), Optional.empty());
            }
            return new Row(line instanceof Line.Topic ? Kind.TOPIC : Kind.PLAIN, "", line.plain(), Optional.empty());
        }

        Line line() {
            return switch (kind) {
                case TOPIC -> new Line.Topic(text);
                case PAIR -> new Line.Pair(label, text);
                case FINDING -> new Line.Finding(weight.orElseThrow(), label, text);
                case PLAIN -> new Line.Paragraph(text);
            };
        }
    }

    /** Call it in the transaction that signs. */
    public void keep(SignedConsent signed, ConsentText text) {
        new ConsentCopy(signed.clientId(), signed.id(), text.language(),
            place -> sealed.sealPaper(signed.clientId(), place, Copy.of(text))).persist();
    }

    /** Ids of those of which there is one, without opening any. */
    public Set<UUID> of(List<SignedConsent> signed, String language) {
        return Set.copyOf(ConsentCopy.kept(signed.stream().map(SignedConsent::id).toList(), language));
    }

    /** Empty where the client read that language, and for what was signed before copies were made. */
    public Optional<Copy> of(SignedConsent signed, String language) {
        return ConsentCopy.of(signed.id(), language).map(copy -> sealed.open(copy, Copy.class));
    }
}
