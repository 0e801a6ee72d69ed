package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.Entity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.LineNumberNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * What is stored is right from birth: a stored class makes itself whole and changes itself by verbs, so that no other class can leave
 * it half filled. Reads the compiled classes, where an assignment cannot hide behind a name.
 */
@DisplayName("Nobody assigns a stored class's field but the class itself")
class StoredClassesTest {
    private static final Path CLASSES = Path.of("target/classes/foretress");
    private static final Path REVIEWED = Path.of("src/test/reviewed/stored-written-outside.txt");
    private static final String ENTITY = Type.getDescriptor(Entity.class);

    /** @param what writer and field, without a line number: what the reviewed list holds */
    private record Assignment(String what, String place) {}

    private final List<ClassNode> classes = classes();
    private final Set<String> stored =
        classes.stream().filter(StoredClassesTest::isStored).map(one -> one.name).collect(Collectors.toSet());
    private final List<Assignment> outside = classes.stream().flatMap(this::outside).toList();

    @Test
    void noFieldOfAStoredClassIsAssignedFromOutsideIt() throws IOException {
        List<String> reviewed = Files.readAllLines(REVIEWED);
        assertThat(outside).filteredOn(one -> !reviewed.contains(one.what()))
            .extracting(one -> one.place() + " " + one.what()).isEmpty();
    }

    @Test
    void theListOfWhatIsLeftOnlyShrinks() throws IOException {
        Set<String> found = outside.stream().map(Assignment::what).collect(Collectors.toCollection(TreeSet::new));
        assertThat(Files.readAllLines(REVIEWED)).as("take out of %s what is mended", REVIEWED).isSubsetOf(found)
            .isSorted();
    }

    @Test
    void theClassesAreReallyRead() {
        assertThat(stored).hasSizeGreaterThan(40).contains("foretress/visit/Visit", "foretress/salon/Salon");
    }

    private Stream<Assignment> outside(ClassNode writer) {
        List<Assignment> found = new ArrayList<>();
        for (MethodNode method : writer.methods) {
            int line = 0;
            for (AbstractInsnNode step : method.instructions) {
                if (step instanceof LineNumberNode number) {
                    line = number.line;
                }
                if (step instanceof FieldInsnNode field && field.getOpcode() == Opcodes.PUTFIELD
                    && isOutside(writer, field)) {
                    found.add(new Assignment(said(writer, method, field), writer.sourceFile + ":" + line));
                }
            }
        }
        return found.stream();
    }

    private boolean isOutside(ClassNode writer, FieldInsnNode field) {
        return stored.contains(field.owner) && !outermost(writer.name).equals(field.owner);
    }

    private static String said(ClassNode writer, MethodNode method, FieldInsnNode field) {
        String within = method.name.replaceAll("^lambda\\$(.*)\\$\\d+$", "$1");
        return "%s.%s: %s.%s".formatted(outermost(writer.name).replace("foretress/", ""), within,
            field.owner.replaceAll(".*/", ""), field.name);
    }

    private static String outermost(String name) {
        return name.replaceAll("\\$.*", "");
    }

    private static boolean isStored(ClassNode one) {
        return one.visibleAnnotations != null
            && one.visibleAnnotations.stream().anyMatch(mark -> mark.desc.equals(ENTITY));
    }

    private static List<ClassNode> classes() {
        try (Stream<Path> files = Files.walk(CLASSES)) {
            return files.filter(file -> file.toString().endsWith(".class")).map(StoredClassesTest::read).toList();
        } catch (IOException e) {
            throw new IllegalStateException("compile first", e);
        }
    }

    private static ClassNode read(Path file) {
        try {
            var node = new ClassNode();
            new ClassReader(Files.readAllBytes(file)).accept(node, ClassReader.SKIP_FRAMES);
            return node;
        } catch (IOException e) {
            throw new IllegalStateException(file.toString(), e);
        }
    }
}
