package foretress.skintest;

import foretress.plan.Owed;
import foretress.post.Letter;
import foretress.salon.Salon;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Cn;
import net.fortuna.ical4j.model.parameter.PartStat;
import net.fortuna.ical4j.model.property.Attendee;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Method;
import net.fortuna.ical4j.model.property.Organizer;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * The short visit as a calendar file (RFC 5545, sent as RFC 5546 asks): the same id through every change, a sequence that only
 * rises, times in UTC so that every calendar shows the one moment. It says where and when, never what for.
 */
@Singleton
class CalendarFile {
    enum What { BOOKED, CANCELLED }

    private final Clock clock;

    CalendarFile(Clock clock) {
        this.clock = clock;
    }

    Letter.Attached of(TestVisit planned, Visit visit, Salon salon, String to, What what) {
        boolean off = what == What.CANCELLED;
        var calendar = new Calendar();
        calendar.add(new ProdId("-//Foretress//Salon visits//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        calendar.add(new Method(off ? Method.VALUE_CANCEL : Method.VALUE_REQUEST));
        calendar.add(event(planned, visit, salon, to, off));
        calendar.validate();
        return new Letter.Attached("visit.ics", "text/calendar; charset=UTF-8; method=" + (off ? "CANCEL" : "REQUEST"),
            calendar.toString());
    }

    private VEvent event(TestVisit planned, Visit visit, Salon salon, String to, boolean off) {
        var event = new VEvent(false);
        var organizer = new Organizer(java.net.URI.create("mailto:" + salon.email));
        organizer.add(new Cn(salon.name));
        var attendee = new Attendee(java.net.URI.create("mailto:" + to));
        attendee.add(PartStat.ACCEPTED);
        List.of(new Uid(planned.id() + "@" + salon.email.replaceAll(".*@", "")), new DtStamp(clock.instant()),
            new Sequence(planned.sequenceNo()), new DtStart<Instant>(planned.startsAt()),
            new DtEnd<Instant>(planned.startsAt().plus(Owed.START)),
            new Summary(TestMails.in(visit.client.language).calendar_summary(salon.name)),
            new Location(salon.address + ", " + salon.town),
            new Status(off ? Status.VALUE_CANCELLED : Status.VALUE_CONFIRMED), organizer, attendee).forEach(event::add);
        return event;
    }
}
