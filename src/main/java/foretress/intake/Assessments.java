package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Facts;
import foretress.assessment.LookedUp;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Weight;
import foretress.hair.Growth;
import foretress.knowledge.Knowledge;
import foretress.plan.Owing;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidTreatment;
import foretress.running.Asked;
import foretress.salon.Menu;
import foretress.salon.Policies;
import foretress.vault.SealedJson;
import foretress.vault.Vault;
import foretress.visit.Visit;
import io.quarkus.arc.All;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes, keeps and shows what the answers mean for the booked services and for every other one the salon offers. */
@ApplicationScoped
public class Assessments {
    private final Knowledge knowledge;
    private final BookedChemistry chemistry;
    private final Menu menu;
    private final Policies policies;
    private final Vault vault;
    private final SealedJson sealed;
    private final List<ChairRecord> records;
    private final TakenBackElsewhere elsewhere;
    private final Clock clock;

    Assessments(Knowledge knowledge, BookedChemistry chemistry, Menu menu, Policies policies, Vault vault,
        SealedJson sealed,
        @All List<ChairRecord> records, TakenBackElsewhere elsewhere, Clock clock) {
        this.knowledge = knowledge;
        this.chemistry = chemistry;
        this.menu = menu;
        this.policies = policies;
        this.vault = vault;
        this.sealed = sealed;
        this.records = records;
        this.elsewhere = elsewhere;
        this.clock = clock;
    }

    /** No medicine's line and no label stays in memory for longer than until the time after next: one may just be read. */
    @Scheduled(every = "10m")
    void forget() {
        knowledge.forgetReadings();
    }

    /** Assesses now, without keeping. */
    public Assessment of(Visit visit, Answers said) {
        return assess(situation(visit, said), looked(visit));
    }

    /** The same as if the visit were today: the age that counts for a skin test is that of the day it is put on. */
    public Assessment asOfToday(Visit visit, Answers said) {
        Situation situation = situation(visit, said);
        return assess(situation.seenOn(situation.today(), situation.today()), looked(visit));
    }

    /** What the rules say of these services for somebody who stands so; within a request it is reckoned once. */
    public Assessment assess(Situation situation, List<Service> services) {
        return Asked.reckoned(List.of(Assessments.class, situation, services),
            () -> Assessor.assess(knowledge.ruleSet(), facts(situation), services));
    }

    private Facts facts(Situation situation) {
        return Asked.reckoned(List.of(Facts.class, situation), () -> knowledge.factFinder().find(situation));
    }

    /**
     * Which tests the booked services owe. Before the first answer it is what they owe whatever is answered: the tests on file,
     * and to every question the answer that weighs least.
     */
    public Owing owing(Visit visit, Answers said) {
        return owing(visit, said, chemistry.services(visit));
    }

    /** The same of services that could be booked in their place. */
    public Owing owing(Visit visit, Answers said, List<Service> planned) {
        Set<String> chemistries =
            planned.stream().flatMap(s -> s.chemistries().stream()).collect(Collectors.toUnmodifiableSet());
        Situation hoped = situation(visit, knowledge.answeredWell(said, chemistries));
        Situation known = said.byQuestion().isEmpty() ? hoped : hoped.saying(said);
        return Owing.of(knowledge.ruleSet(), this::facts, known, hoped, planned);
    }

    /** Days after its start on which findings ask for another reading of a skin test; 0 when none does. */
    public int readAgainDays(Visit visit, Answers said) {
        List<Service> booked = chemistry.services(visit);
        Situation known = told(visit, knowledge.answeredWell(said, chemistry.of(visit)));
        return Owing.readAgain(knowledge.ruleSet(),
            assess(known, booked), booked);
    }

    /** Booked services first, with their booked steps; then the others as the salon offers them. */
    public List<Service> looked(Visit visit) {
        List<Service> looked = new ArrayList<>(chemistry.services(visit));
        List<String> booked = looked.stream().map(Service::id).toList();
        menu.offered().stream().filter(s -> !booked.contains(s.id())).forEach(looked::add);
        return looked;
    }

    /** The heaviest standing of the booked services. */
    public Weight booked(Visit visit, Assessment assessment) {
        return Weight.heaviest(chemistry.services(visit).stream()
            .map(s -> assessment.standing(s.id()).map(st -> st.weight()).orElse(Weight.COULD_NOT_BE_ASSESSED))
            .toList());
    }

    /** Assesses and keeps: facts, findings and the rules' hash, so that it can be explained years later. */
    public Assessment renew(Visit visit, Answers said) {
        return keep(visit, said, true);
    }

    /** The same while answers are still being given: it gives way to the next one, so that no trace is left of how they came in. */
    Assessment passing(Visit visit, Answers said) {
        Assessment passing = keep(visit, said, false);
        KeptAssessment.flush(); // at once: what waits to be written has everything after it asked anew
        return passing;
    }

    /** Whether the newest kept assessment would come out otherwise now; false while there is none. */
    boolean outdated(Visit visit, Answers said) {
        return KeptAssessment.newest(visit.id).map(this::read).filter(kept -> {
            Assessment now = of(visit, said);
            return !kept.findings().equals(now.findings()) || !kept.standings().equals(now.standings());
        }).isPresent();
    }

    /** Assesses anew, to last as long as the newest one would have. */
    void again(Visit visit, Answers said) {
        keep(visit, said, KeptAssessment.newest(visit.id).map(kept -> kept.held()).orElse(true));
    }

    private Assessment keep(Visit visit, Answers said, boolean held) {
        Assessment assessment = of(visit, said);
        Weight stands = booked(visit, assessment).heavier(earlier(visit, assessment))
            .heavier(elsewhere.on(visit, chemistry.services(visit)));
        visit.stands(stands.code());
        KeptAssessment.newest(visit.id).filter(before -> !before.held()).ifPresent(KeptAssessment::delete);
        new KeptAssessment(visit, clock.instant(), assessment.ruleSetHash(), answers(visit, said), held,
            place -> sealed.sealPaper(visit.client.id, place, assessment)).persist();
        return assessment;
    }

    /** Whether what was said in the last days, if anything, decides nothing that is found. */
    boolean nothingInTheLastDays(Visit visit, Answers said) {
        List<String> told = near(visit, said).stream().map(Question::id)
            .filter(id -> said.to(id).filter(answer -> !answer.saysNo()).isPresent()).toList();
        return told.isEmpty()
            || of(visit, said).findings().stream().flatMap(f -> f.causes().stream()).noneMatch(told::contains);
    }

    /** Whether what is shown still takes for granted that the skin of the visit's day, which nobody was asked about yet, is well. */
    public boolean takesTheDayForGranted(Visit visit, Answers said) {
        return !said.byQuestion().isEmpty() && !assumed(visit, said).equals(said);
    }

    private String answers(Visit visit, Answers said) {
        return vault.code(visit.keyOf, KeptAssessment.ANSWERS, Intake.hash(said));
    }

    /** Whether it was made from exactly these answers. */
    public boolean isOf(KeptAssessment kept, Visit visit, Answers said) {
        return kept.answersCode().equals(answers(visit, said));
    }

    /** What the answers alone tell, with doctors' words but without tests and measurements: for those who keep these. */
    public Situation told(Visit visit, Answers answers) {
        Answers said = assumed(visit, answers);
        return new Situation(clock.instant().atZone(visit.zone()).toLocalDate(), visit.startsThere().toLocalDate(),
            visit.client.birthDate(), chemistry.of(visit), knowledge.questionnaire(), said, policies.effective(),
            records.stream().flatMap(r -> r.words(visit).stream()).toList(), Optional.empty()).lookingUp(lookedUp());
    }

    private Answers assumed(Visit visit, Answers said) {
        LocalDate today = clock.instant().atZone(visit.zone()).toLocalDate();
        return said.byQuestion().isEmpty() ? said : LastDays.assumed(visit, today, near(visit, said), said);
    }

    /** What the last days ask for what is booked. */
    private List<Question> near(Visit visit, Answers said) {
        Set<String> booked = chemistry.of(visit);
        return knowledge.questionnaire().questions().stream().filter(Question::onlyNear)
            .filter(q -> knowledge.questionnaire().status(q, booked, said) == Question.Status.ASKED).toList();
    }

    private List<LookedUp> lookedUp() {
        return records.stream().flatMap(r -> r.lookedUp().stream()).toList();
    }

    /** What findings of earlier visits that still stand weigh on what is booked. */
    private Weight earlier(Visit visit, Assessment assessment) {
        List<Service> booked = chemistry.services(visit);
        return Weight.heaviest(records.stream().flatMap(r -> r.earlier(visit, assessment).stream())
            .flatMap(f -> booked.stream().map(f::on)).toList());
    }

    /** What this salon did to the client's hair before. */
    public List<SaidTreatment> done(Visit visit) {
        return records.stream().flatMap(r -> r.treatments(visit).stream()).toList();
    }

    /** All that is known about the client before this visit. */
    public Situation situation(Visit visit, Answers answers) {
        Answers said = assumed(visit, answers);
        return new Situation(clock.instant().atZone(visit.zone()).toLocalDate(), visit.startsThere().toLocalDate(),
            visit.client.birthDate(), chemistry.of(visit), knowledge.questionnaire(), said,
            policies.effective(), records.stream().flatMap(r -> r.tests(visit).stream()).toList(),
            hair(visit), lookedUp());
    }

    private Situation.OnFile hair(Visit visit) {
        return new Situation.OnFile(records.stream().flatMap(r -> r.measuredLengthCm(visit).stream()).findFirst(),
            records.stream().flatMap(r -> r.cuts(visit).stream()).toList(),
            records.stream().flatMap(r -> r.growth(visit).stream()).findFirst().orElse(Growth.PUBLISHED), done(visit));
    }

    /** An assessment as it was made, with the facts and findings of its day. */
    public Assessment read(KeptAssessment kept) {
        return sealed.open(kept, Assessment.class);
    }
}
