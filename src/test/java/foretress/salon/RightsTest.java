package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.ws.rs.Path;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("B23: the table of rights names every route there is, and no other")
class RightsTest {
    private static List<String> routesInTheCode() throws IOException, URISyntaxException {
        java.nio.file.Path root =
            java.nio.file.Path.of(Rights.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (Stream<java.nio.file.Path> files = Files.walk(root.resolve("foretress"))) {
            return files.map(file -> root.relativize(file).toString()).filter(name -> name.endsWith(".class"))
                .map(name -> name.substring(0, name.length() - 6).replace('/', '.')).flatMap(RightsTest::routesOf)
                .sorted().toList();
        }
    }

    private static Stream<String> routesOf(String className) {
        try {
            Class<?> type = Class.forName(className, false, RightsTest.class.getClassLoader());
            if (!type.isAnnotationPresent(Path.class)) {
                return Stream.empty();
            }
            return Arrays.stream(type.getMethods()).filter(RightsTest::answers).map(method -> Route.of(type, method));
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean answers(Method method) {
        return Route.verb(method).isPresent();
    }

    private static List<String> routesInTheTable() {
        return Rights.table().stream().map(Right::route).sorted().toList();
    }

    @Test
    void everyRouteHasItsLineAndEveryLineItsRoute() throws Exception {
        assertThat(routesInTheCode()).isNotEmpty();
        assertThat(routesInTheTable()).containsExactlyElementsOf(routesInTheCode());
    }

    @Test
    void everyStaffLineLetsSomebodyIn() {
        assertThat(Rights.table()).filteredOn(right -> right.kind() == Right.Kind.STAFF)
            .allSatisfy(right -> assertThat(right.roles()).as(right.route()).isNotEmpty());
    }

    @Test
    void everythingBelowTheApiIsForProgramsAndNothingElseIs() {
        assertThat(Rights.table()).allSatisfy(right -> assertThat(right.kind() == Right.Kind.PROGRAM).as(right.route())
            .isEqualTo(right.route().contains(" /api/")));
    }

    @Test
    void onlyTheOwnerLetsProgramsIn() {
        assertThat(Rights.table()).filteredOn(right -> right.route().contains("/programs")).isNotEmpty()
            .allSatisfy(right -> assertThat(right.roles()).as(right.route()).containsExactly(Role.OWNER));
    }

    @Test
    void onlyTheOwnerDecidesWhoWorksHere() {
        assertThat(Rights.table()).filteredOn(right -> right.route().contains("/staff"))
            .allSatisfy(right -> assertThat(right.roles()).as(right.route()).containsExactly(Role.OWNER));
    }

    /** What the desk must not see is what a client said about their health; those screens are under these paths. */
    @Test
    void theDeskReachesNoHealthAnswers() {
        assertThat(Rights.table()).filteredOn(right -> right.allows(Role.DESK))
            .noneMatch(right -> right.route().matches("\\S+ /(visits|day|clients)\\b.*"));
    }

    @Test
    void aPathIsReadWithoutWhatItsParameterMustLookLike() throws Exception {
        @Path("/things/{id: [0-9]+}")
        class Things {
            @jakarta.ws.rs.GET
            @Path("parts/{part}/")
            public void show() {}
        }
        assertThat(Route.of(Things.class, Things.class.getMethod("show"))).isEqualTo("GET /things/{id}/parts/{part}");
    }
}
