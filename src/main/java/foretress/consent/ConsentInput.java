package foretress.consent;

import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.hair.StrandDrawing;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Everything one consent speaks of, already in the client's words and language; nothing is looked up later.
 *
 * @param language BCP 47 tag of the language the client reads
 * @param standing the heaviest weight on the booked services
 * @param found what was found, heaviest first
 * @param answered every answer given, in the order the questions were asked
 * @param warnings what the law has printed on the label of what will be used, as sentences in order
 * @param salt see {@link Consents#salt}; empty in examples
 * @param dayToCome what is found takes for granted that the skin of the visit's day is well: nobody was asked about it yet
 * @param strand where earlier treatments lie on the hair; empty when there is nothing to draw
 */
public record ConsentInput(
    String language, Salon salon, Client client, Visit visit, Weight standing,
    Asked asked, List<Found> found, List<Answered> answered, List<String> warnings, Optional<Strand> strand,
    Purpose purpose, String salt, boolean dayToCome) {

    /**
     * The tests that are owed.
     *
     * @param agreed those the client is asked to agree to, in the order they are done
     * @param refused those the client does not want
     */
    public record Asked(List<Test> agreed, List<Test> refused) {
        public Asked {
            agreed = List.copyOf(agreed);
            refused = List.copyOf(refused);
        }

        public static Asked of(List<Test> tests) {
            return new Asked(tests, List.of());
        }
    }

    /** What is agreed to. */
    public enum Purpose {
        SERVICE("service"), SKIN_TEST("skin-test");

        private final String code;

        Purpose(String code) {
            this.code = code;
        }

        /** As stored. */
        public String code() {
            return code;
        }
    }

    /** A consent before a service. */
    public ConsentInput(String language, Salon salon, Client client, Visit visit, Weight standing, List<Test> tests,
        List<Found> found, List<Answered> answered, Optional<Strand> strand) {
        this(language, salon, client, visit, standing, Asked.of(tests), found, answered, List.of(), strand,
            Purpose.SERVICE, "", false);
    }

    /** A consent before a skin test: the product and the place on the skin stand in the test's name. */
    public static ConsentInput ofSkinTest(String language, Salon salon, Client client, Visit visit, Test test) {
        return new ConsentInput(language, salon, client, visit, Weight.TEST_FIRST, Asked.of(List.of(test)), List.of(),
            List.of(), List.of(), Optional.empty(), Purpose.SKIN_TEST, "", false);
    }

    /** The same with what stands on the label. */
    public ConsentInput warning(List<String> sentences) {
        return new ConsentInput(language, salon, client, visit, standing, asked, found, answered, sentences, strand,
            purpose, salt, dayToCome);
    }

    /** The same with its visit's salt in it. */
    public ConsentInput salted(String visits) {
        return new ConsentInput(language, salon, client, visit, standing, asked, found, answered, warnings, strand,
            purpose, visits, dayToCome);
    }

    /** The same, with whether the skin of the day is still to be asked about. */
    public ConsentInput beforeTheDay(boolean still) {
        return new ConsentInput(language, salon, client, visit, standing, asked, found, answered, warnings, strand,
            purpose, salt, still);
    }

    /** A consent without a strand map. */
    public ConsentInput(String language, Salon salon, Client client, Visit visit, Weight standing, List<Test> tests,
        List<Found> found, List<Answered> answered) {
        this(language, salon, client, visit, standing, tests, found, answered, Optional.empty());
    }

    public ConsentInput {
        found = List.copyOf(found);
        answered = List.copyOf(answered);
        warnings = List.copyOf(warnings);
    }

    public List<Test> tests() {
        return asked.agreed();
    }

    public List<Test> refused() {
        return asked.refused();
    }

    /** The same with those of its tests the client does not want set apart. */
    public ConsentInput refusing(Set<String> ids) {
        Map<Boolean, List<Test>> parted =
            tests().stream().collect(Collectors.partitioningBy(test -> ids.contains(test.id())));
        return new ConsentInput(language, salon, client, visit, standing,
            new Asked(parted.get(false), parted.get(true)), found, answered, warnings, strand, purpose, salt,
            dayToCome);
    }

    /** Whether the answers, or a test refused, rule the booked service out: then they are signed, and no consent to it. */
    public boolean prevented() {
        return purpose == Purpose.SERVICE && (standing == Weight.PREVENTS || !refused().isEmpty());
    }

    /**
     * The salon as its clients know it.
     *
     * @param urgentNumber the number to call for an ambulance where the salon is
     */
    public record Salon(String name, String address, String town, String phone, String email, String opening,
        String urgentNumber) {}

    public record Client(UUID id, String name, Optional<LocalDate> born) {}

    /** The visit in the salon's own zone; services by the names the client reads. */
    public record Visit(UUID id, ZonedDateTime startsAt, String stylist, List<String> services) {
        public Visit {
            services = List.copyOf(services);
            if (services.isEmpty()) {
                throw new IllegalArgumentException("a consent names at least one service");
            }
        }
    }

    /**
     * A test the client agrees to.
     *
     * @param id its id in knowledge; the words on how far it can be trusted hang on it
     * @param name what the client reads, e.g. "a skin test with Larkmoss 4-0"
     */
    public record Test(String id, String name) {
        /** Asking a doctor is owed like a test, but nobody does it to the client: it is promised, not agreed to. */
        public boolean isAdvice() {
            return id.equals(TestFact.ADVICE);
        }
    }

    /** One finding in the client's words. */
    public record Found(Weight weight, String text) {}

    /**
     * The strand map as a drawing and in words; what is drawn is said, so that both can be signed.
     *
     * @param drawing made with {@link foretress.hair.StrandLayout#PAPER}
     */
    public record Strand(StrandDrawing drawing, List<String> words) {
        public Strand {
            words = List.copyOf(words);
        }
    }

    /**
     * One answer as the client would say it, under the topic it was asked in.
     *
     * @param unknown it says no more than that the client does not know
     */
    public record Answered(String topic, String question, String answer, boolean unknown) {
        public Answered(String topic, String question, String answer) {
            this(topic, question, answer, false);
        }
    }
}
