package foretress.bench;

import foretress.visit.Visit;
import foretress.web.ChairTime;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.List;

/** Makes what stands under a test. */
@RequestScoped
class BenchTails {
    private final BenchRecords tests;
    private final BenchDoor door;
    private final BenchWords say;
    private final ChairTime time;

    BenchTails(BenchRecords tests, BenchDoor door, BenchWords say, ChairTime time) {
        this.tests = tests;
        this.door = door;
        this.say = say;
        this.time = time;
    }

    BenchTail of(Visit visit, BenchRecord test) {
        String href = BenchDoor.at(visit) + "/tests/" + test.id();
        List<BenchTail.Photo> photos = tests.photos(test).stream()
            .map(p -> new BenchTail.Photo(href + "/photo/" + p.id(), say.photo_of(at(visit, p.takenAt())))).toList();
        return new BenchTail(href, say.made_by(BenchDoor.name(test.madeBy()), at(visit, test.begun())),
            struck(visit, test),
            test.struck() ? BenchStrike.NO : door.strike(test),
            !test.struck() && photos.size() < BenchRecords.MOST_PHOTOS, photos);
    }

    String struck(Visit visit, BenchRecord test) {
        return test.struckAt()
            .map(
                at -> say.struck(tests.struckWhy(test), test.struckBy().map(BenchDoor::name).orElse(""), at(visit, at)))
            .orElse("");
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }
}
