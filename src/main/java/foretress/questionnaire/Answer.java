package foretress.questionnaire;

import java.util.List;

/** What a client said. Not knowing is a thing one can say; not having answered is not an Answer. */
public sealed interface Answer {

    /** One or several of the offered options, as codes, in the order of the question. */
    record Chosen(List<String> codes) implements Answer {
        public Chosen {
            codes = List.copyOf(codes);
            if (codes.isEmpty()) {
                throw new IllegalArgumentException("a choice holds at least one code");
            }
        }

        public static Chosen of(String... codes) {
            return new Chosen(List.of(codes));
        }
    }

    /** A date as precise as the client can say it. */
    record Said(SaidDate date) implements Answer {}

    /**
     * Length of the longest hair.
     *
     * @param lengthCm 1 to 200 cm
     * @param drawnStraight whether it was drawn gently straight; a coil hides half, so no counts as unknown
     */
    record Length(int lengthCm, boolean drawnStraight) implements Answer {
        public static final int LONGEST_CM = 200;

        public Length {
            if (lengthCm < 0 || lengthCm > LONGEST_CM) {
                throw new IllegalArgumentException("not a length of hair: " + lengthCm + " cm");
            }
        }
    }

    /** Earlier treatments of the hair, newest said first. An empty list means "none that I remember". */
    record Treatments(List<SaidTreatment> list) implements Answer {
        public Treatments {
            list = List.copyOf(list);
        }
    }

    /** Medicines as typed; an empty list means "none". */
    record Medicines(List<Medicine> list) implements Answer {
        public Medicines {
            list = List.copyOf(list);
        }
    }

    /** Free words: an ingredient list or a note, as written. */
    record Text(String text) implements Answer {}

    record DontKnow() implements Answer {}

    record RatherNotSay() implements Answer {}

    Answer DONT_KNOW = new DontKnow();
    Answer RATHER_NOT_SAY = new RatherNotSay();

    /** The codes a condition can look for; of treatments those that stand on the list. Kinds without codes have none
     * but the two ways of not saying. */
    default List<String> codes() {
        if (this instanceof Chosen chosen) {
            return chosen.codes();
        }
        if (this instanceof Treatments treatments) {
            return treatments.list().stream().map(SaidTreatment::what).distinct().toList();
        }
        if (this instanceof DontKnow) {
            return List.of(Question.DONT_KNOW);
        }
        if (this instanceof RatherNotSay) {
            return List.of(Question.RATHER_NOT_SAY);
        }
        return List.of();
    }

    /** Whether there is nothing to tell: no, never, none of all that was offered, an empty list. */
    default boolean saysNo() {
        return this instanceof Chosen chosen && Question.NOES.containsAll(chosen.codes())
            || this instanceof Treatments treatments && treatments.list().isEmpty()
            || this instanceof Medicines medicines && medicines.list().isEmpty();
    }

    /** Whether the client could or would not say. */
    default boolean unknown() {
        return this instanceof DontKnow || this instanceof RatherNotSay;
    }
}
