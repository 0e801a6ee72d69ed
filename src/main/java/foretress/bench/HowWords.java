package foretress.bench;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** How a test is made, step by step, for somebody who makes it for the first time; in messages/how.properties under the same keys. */
@MessageBundle("how")
public interface HowWords {
    @Message
    String ammonia();
    @Message
    String ammonia_summary();
    @Message
    String away();
    @Message
    String cut_1();
    @Message
    String cut_2();
    @Message
    String cut_3();
    @Message
    String cut_4();
    @Message
    String cut_5();
    @Message
    String cut_6();
    @Message
    String cut_summary();
    @Message
    String enough();
    @Message
    String mix_1();
    @Message
    String mix_2();
    @Message
    String mix_3();
    @Message
    String mix_ml_hint(int ml, int tufts);
    @Message
    String mix_wrong();
    @Message
    String mix_wrong_1();
    @Message
    String mix_wrong_2();
    @Message
    String mix_wrong_3();
    @Message
    String mix_wrong_4();
    @Message
    String mix_wrong_source();
    @Message
    String practice();
    @Message
    String pull_1();
    @Message
    String pull_2();
    @Message
    String pull_3();
    @Message
    String pull_4();
    @Message
    String pull_5();
    @Message
    String pull_source();
    @Message
    String pull_summary();
    @Message
    String trial_away();
    @Message
    String would_mean();
}
