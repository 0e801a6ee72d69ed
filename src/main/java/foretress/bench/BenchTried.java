package foretress.bench;

import foretress.assessment.Weight;
import foretress.bench.BenchOverview.Past;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What was tried and measured, in words. */
@RequestScoped
public class BenchTried {
    private final BenchRecords tests;
    private final BenchTails tails;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;

    BenchTried(BenchRecords tests, BenchTails tails, BenchSay words, BenchWords say, ChairTime time) {
        this.tests = tests;
        this.tails = tails;
        this.words = words;
        this.say = say;
        this.time = time;
    }

    /** As staff measured it at this visit; empty where nobody did. */
    String length(Visit visit) {
        return tests.of(visit.client.id).stream()
            .filter(t -> t.kind() == BenchKind.LENGTH && !t.struck() && t.visitId().equals(visit.id)).findFirst()
            .map(t -> say.length_measured(tests.body(t, BenchLengthBody.class).cm(), at(visit, t.madeAt()))).orElse("");
    }

    /** Every test of the client, the newest first. */
    public List<Past> past(Visit visit) {
        return tests.of(visit.client.id).stream().map(t -> past(visit, t)).toList();
    }

    private Past past(Visit visit, BenchRecord test) {
        Optional<String> outcome = tests.outcome(test);
        String href = test.kind() == BenchKind.LENGTH ? "" : BenchDoor.at(test);
        return new Past(href, words.kind(test.kind()), at(visit, test.begun()), outcome.isPresent(),
            outcome.map(BenchSay::weight).orElse(Weight.NOTE),
            outcome.map(words::outcome).orElseGet(() -> unread(test)), test.struck(), tails.struck(visit, test));
    }

    private String unread(BenchRecord test) {
        if (test.kind() == BenchKind.LENGTH) {
            return say.length_cm(tests.body(test, BenchLengthBody.class).cm());
        }
        return test.struck() ? say.struck_short() : switch (test.state()) {
            case MADE -> say.state_prepared();
            case RUNNING -> say.state_running();
            case ENDED -> say.state_says_nothing();
        };
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }
}
