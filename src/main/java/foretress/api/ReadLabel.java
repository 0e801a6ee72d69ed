package foretress.api;

import foretress.knowledge.Knowledge;
import foretress.lexicon.LabelReading;
import foretress.lexicon.LabelReading.Reason;
import foretress.lexicon.LabelReading.Sureness;
import foretress.lexicon.Substance;
import java.util.List;
import java.util.Optional;

/** An ingredient list into known substances and unknown words. */
final class ReadLabel {
    private final Knowledge knowledge;

    ReadLabel(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    record Pasted(@Json(least = 1, most = CodedAnswers.LONGEST_TEXT, says = "The list as pasted.") String text) {}

    @Json(name = "LabelReading")
    record Read(List<Found> found, List<Unknown> unknown,
        @Json(
            says = "Named only to say that it is not in there: no substance of the product.") List<Claim> claimedAbsent,
        @Json(
            says = "Words that name nothing in the product, so that every word of the text stands in one of the four.") List<Beside> beside) {}

    record Found(int from, int to, String written, String name, @Json(name = "class") String kind,
        Substance.Risk risk, Optional<String> cas, Sureness sureness, boolean mayContain) {}

    record Unknown(int from, int to, String written,
        @Json(
            says = "Where a damaged word could be several substances: each is to be reckoned with.") List<Near> mightBe) {}

    record Near(String name, @Json(name = "class") String kind, Substance.Risk risk) {}

    record Claim(int from, int to, String written, String name, @Json(name = "class") String kind,
        Substance.Risk risk, Optional<String> cas) {}

    record Beside(int from, int to, String written, Reason reason) {}

    Operation operation() {
        return Operation.of("read-label", "read-label", Scope.READ, "What an ingredient list holds",
            "A pasted or typed list in; known substances with their place, class and how they were recognised out. Words that are not recognised are listed, "
                + "never dropped. A list can be out of date or incomplete: what is not found in it is not thereby absent from the product. Places are UTF-16 code units.",
            Pasted.class, Read.class, List.of("restorer-lotion", "a-slip-and-a-claim"),
            pasted -> read(knowledge.labels().read(pasted.text())));
    }

    private static Read read(LabelReading label) {
        return new Read(label.found().stream().map(ReadLabel::found).toList(),
            label.unknown().stream().map(ReadLabel::unknown).toList(),
            label.claims().stream().map(ReadLabel::claim).toList(),
            label.beside().stream().map(b -> new Beside(b.from(), b.to(), b.written(), b.reason())).toList());
    }

    private static Found found(LabelReading.Found f) {
        return new Found(f.from(), f.to(), f.written(), f.substance().name(), f.substance().kind(),
            f.substance().risk(), cas(f.substance()), f.sureness(), f.mayContain());
    }

    private static Unknown unknown(LabelReading.Unknown u) {
        return new Unknown(u.from(), u.to(), u.written(),
            u.near().stream().map(s -> new Near(s.name(), s.kind(), s.risk())).toList());
    }

    private static Claim claim(LabelReading.Claim c) {
        return new Claim(c.from(), c.to(), c.written(), c.substance().name(), c.substance().kind(),
            c.substance().risk(), cas(c.substance()));
    }

    private static Optional<String> cas(Substance substance) {
        return substance.cas().map(cas -> cas.number());
    }
}
