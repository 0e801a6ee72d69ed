package foretress.api;

import foretress.knowledge.Knowledge;
import foretress.lexicon.MedicineReading;
import foretress.lexicon.MedicineReading.Said;
import foretress.lexicon.MedicineReading.Sureness;
import foretress.lexicon.MedicineRow;
import java.util.List;

/** Typed medicines into classes. */
final class ReadMedicines {
    static final String CAUTION =
        "Medicines stay as they are: whether one may be changed is for the client's doctor or pharmacist alone. "
            + "What is not recognised has to be asked about.";

    static final int LONGEST = 4_000;

    private final Knowledge knowledge;

    ReadMedicines(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    record Typed(@Json(least = 1, most = LONGEST, says = "The medicines as typed.") String text) {}

    @Json(name = "MedicineReading")
    record Read(List<Name> names, String caution) {}

    record Name(String typed,
        @Json(says = "A spelling slip wants a second look: another medicine may be meant.") Sureness sureness,
        @Json(
            says = "What the words around it say. One that is stopped or denied is kept and counts: ask when it was last taken.") Said said,
        @Json(most = 1_000) List<Row> classes) {}

    record Row(String name, @Json(name = "class") String kind, String effect, String why) {}

    Operation operation() {
        return Operation.of("read-medicines", "read-medicines", Scope.READ,
            "What typed medicines mean at the chair",
            "A line or a list as somebody typed it in; every name with its classes and how it was recognised out. A name that is not recognised is listed "
                + "as such, never dropped. " + CAUTION,
            Typed.class, Read.class, List.of("a-list-with-a-slip"), typed -> read(typed.text()));
    }

    private Read read(String text) {
        return new Read(knowledge.medicines().read(text).names().stream().map(ReadMedicines::name).toList(), CAUTION);
    }

    private static Name name(MedicineReading.Name name) {
        return new Name(name.typed(), name.sureness(), name.said(),
            name.rows().stream().map(ReadMedicines::row).toList());
    }

    private static Row row(MedicineRow row) {
        return new Row(row.name(), row.kind(), row.effect(), row.why());
    }
}
