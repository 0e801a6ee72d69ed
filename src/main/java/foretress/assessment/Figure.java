package foretress.assessment;

import java.util.Optional;

/** A whole number that knowledge gives itself, or leaves to the policy by name. */
public record Figure(Optional<Integer> number, String policyName) {
    public static Figure of(int number) {
        return new Figure(Optional.of(number), "");
    }

    public static Figure ofPolicy(String name) {
        return new Figure(Optional.empty(), name);
    }

    int in(Policy policy) {
        return number.orElseGet(() -> policy.figure(policyName));
    }
}
