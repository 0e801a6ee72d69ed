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
    String feel_1();
    @Message
    String feel_2();
    @Message
    String feel_3();
    @Message
    String feel_4();
    @Message
    String feel_5();
    @Message
    String feel_source();
    @Message
    String feel_summary();
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
    String trial_cut_1();
    @Message
    String trial_cut_2();
    @Message
    String trial_cut_3();
    @Message
    String trial_cut_4();
    @Message
    String trial_cut_5();
    @Message
    String trial_head_1();
    @Message
    String trial_head_2();
    @Message
    String trial_head_3();
    @Message
    String trial_head_4();
    @Message
    String trial_head_means();
    @Message
    String trial_look();
    @Message
    String trial_look_good();
    @Message
    String trial_look_poor();
    @Message
    String trial_source();
    @Message
    String trial_wrong_cut();
    @Message
    String trial_wrong_head();
    @Message
    String would_mean();
}
