package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.consent.ConsentInput;
import foretress.consent.ConsentInput.Answered;
import foretress.consent.ConsentText;
import foretress.consent.ConsentWords;
import foretress.consent.Consents;
import foretress.hair.StrandDrawing;
import foretress.hair.StrandLayout;
import foretress.hair.StrandMap;
import foretress.hair.StrandWords;
import foretress.intake.ReadBackPages.Chapter;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.Visit;
import foretress.web.StaffLanguage;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Gathers what the consent of this visit speaks of, in the client's own words. */
@RequestScoped
public class ConsentDraft {
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Plans plans;
    private final StrandMaps maps;
    private final Views views;
    private final SalonWords salonWords;
    private final Policies policies;
    private final Menu menu;
    private final ClientLanguage speech;
    private final Consents consents;
    private final Refusals refusals;
    private final FoundWords found;

    ConsentDraft(Assessments assessments, BookedChemistry chemistry, Plans plans, StrandMaps maps, Views views,
        SalonWords salonWords,
        Policies policies, Menu menu, ClientLanguage speech, Refusals refusals, FoundWords found, Consents consents) {
        this.consents = consents;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.plans = plans;
        this.maps = maps;
        this.views = views;
        this.salonWords = salonWords;
        this.policies = policies;
        this.menu = menu;
        this.speech = speech;
        this.refusals = refusals;
        this.found = found;
    }

    public ConsentInput of(Visit visit, Answers said) {
        Assessment assessment = assessments.of(visit, said);
        List<Finding> findings = onBooked(visit, assessment);
        List<String> owed = plans.owed(visit, said);
        return new ConsentInput(speech.words().language(), salonWords.of(Salon.the(), speech.words().language()),
            client(visit),
            visit(visit), assessments.booked(visit, assessment), tests(owed),
            found.of(findings, chemistry.services(visit), f -> weight(visit, f), owed), answered(visit, said),
            strand(visit, said))
            .warning(warnings(visit)).refusing(refusals.of(visit)).salted(consents.salt(visit.client.id, visit.id))
            .beforeTheDay(assessments.takesTheDayForGranted(visit, said));
    }

    /** The same in each language that staff read and the client does not: copies, which nobody signs. */
    List<ConsentText> copies(Visit visit, Answers said) {
        return StaffLanguage.TAGS.stream().filter(tag -> !tag.equals(speech.words().language()))
            .map(tag -> speech.in(tag, () -> ConsentText.of(of(visit, said), ConsentWords.in(tag)))).toList();
    }

    /** What the law of the place has printed on the labels of what the booked steps put on the client. */
    private List<String> warnings(Visit visit) {
        return policies.place().warningsOn(chemistry.of(visit)).map(id -> speech.words().text("policy.warnings." + id))
            .toList();
    }

    private Optional<ConsentInput.Strand> strand(Visit visit, Answers said) {
        StrandMap map = maps.map(visit, said, speech.words());
        StrandWords words = StrandMaps.words(speech.words());
        return map.lanes().isEmpty() ? Optional.empty()
            : Optional.of(new ConsentInput.Strand(StrandDrawing.of(map, words, StrandLayout.PAPER), words.list(map)));
    }

    private static ConsentInput.Client client(Visit visit) {
        return new ConsentInput.Client(visit.client.id, visit.client.fullName(), visit.client.birthDate());
    }

    private ConsentInput.Visit visit(Visit visit) {
        List<String> services = visit.services.stream().map(s -> menu.name(s.serviceId, speech.words())).toList();
        String stylist = Staff.nameOf(visit.stylistId);
        return new ConsentInput.Visit(visit.id, visit.startsThere(), stylist, services);
    }

    /** What weighs on any booked step, the heaviest first. */
    private List<Finding> onBooked(Visit visit, Assessment assessment) {
        return assessment.findings().stream().filter(f -> weight(visit, f) != Weight.NOTHING_FOUND)
            .sorted((a, b) -> weight(visit, b).compareTo(weight(visit, a))).toList();
    }

    private Weight weight(Visit visit, Finding finding) {
        Stream<Service> services = chemistry.services(visit).stream();
        return Weight.heaviest(services.map(finding::on).toList());
    }

    /** The plan's own tests and no other: nobody agrees to one that could change nothing. */
    private List<ConsentInput.Test> tests(List<String> owed) {
        return owed.stream().map(id -> new ConsentInput.Test(id, speech.words().plainTest(id))).toList();
    }

    private List<Answered> answered(Visit visit, Answers said) {
        List<Answered> all = new ArrayList<>();
        for (Chapter chapter : views.chapters(visit, said)) {
            chapter.lines().forEach(line -> all.add(new Answered(chapter.title(), line.label(), line.answer(),
                said.to(line.question()).filter(Answer.DONT_KNOW::equals).isPresent())));
        }
        return all;
    }
}
