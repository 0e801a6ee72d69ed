package foretress.api;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import java.util.List;
import java.util.Set;

/** One answer as programs send it, told apart by the first field; which of them a question takes hangs on its kind. */
sealed interface CodedAnswer {
    Answer answer();

    /** What the form alone cannot tell: a span the wrong way round, "none" beside something else. */
    default void check(String place, Faults faults) {}

    record Chosen(@Json(as = "options") Set<String> chosen) implements CodedAnswer {
        @Override
        public Answer answer() {
            return new Answer.Chosen(List.copyOf(chosen));
        }

        @Override
        public void check(String place, Faults faults) {
            faults.expect(chosen.size() == 1 || !chosen.contains(Question.NONE), place + "/chosen",
                "'none' stands alone");
        }
    }

    record OnDate(CodedDate date) implements CodedAnswer {
        @Override
        public Answer answer() {
            return new Answer.Said(date.date());
        }

        @Override
        public void check(String place, Faults faults) {
            date.check(place + "/date", faults);
        }
    }

    record Length(@Json(most = Answer.Length.LONGEST_CM) int lengthCm, boolean drawnStraight) implements CodedAnswer {
        @Override
        public Answer answer() {
            return new Answer.Length(lengthCm, drawnStraight);
        }
    }

    record Treatments(@Json(most = CodedAnswers.MOST_ENTRIES) List<CodedTreatment> treatments) implements CodedAnswer {
        @Override
        public Answer answer() {
            return new Answer.Treatments(treatments.stream().map(CodedTreatment::treatment).toList());
        }

        @Override
        public void check(String place, Faults faults) {
            for (int i = 0; i < treatments.size(); i++) {
                treatments.get(i).check(place + "/treatments/" + i, faults);
            }
        }
    }

    record Medicines(@Json(most = CodedAnswers.MOST_ENTRIES) List<CodedMedicine> medicines) implements CodedAnswer {
        @Override
        public Answer answer() {
            return new Answer.Medicines(medicines.stream().map(CodedMedicine::medicine).toList());
        }
    }

    record Text(@Json(least = 1, most = CodedAnswers.LONGEST_TEXT) String text) implements CodedAnswer {
        @Override
        public Answer answer() {
            return new Answer.Text(text);
        }
    }

    record Not(@Json(as = "nots") NotTold not) implements CodedAnswer {
        @Override
        public Answer answer() {
            return not == NotTold.KNOWN ? Answer.DONT_KNOW : Answer.RATHER_NOT_SAY;
        }
    }

    enum NotTold {
        KNOWN, SAID
    }
}
