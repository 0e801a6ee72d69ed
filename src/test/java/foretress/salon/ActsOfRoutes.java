package foretress.salon;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.LdcInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;
import org.objectweb.asm.tree.TypeInsnNode;

/**
 * Which acts a route can leave in the audit trail, found in the compiled classes: whatever its method can come to, through helpers,
 * subclasses, lambdas and observers, and the names of acts that stand there. It may say too much, never too little.
 */
final class ActsOfRoutes {
    private static final Path CLASSES = Path.of("target/classes");
    private static final String OURS = "foretress/", ACT_OF_THE_CLOCK = "server";
    /** What every request passes, and what draws pages in words, leaves nothing of its own. */
    private static final Set<String> NOT_FOLLOWED = Set.of("foretress/running/AuditEvent");

    private final Map<String, ClassNode> classes = new HashMap<>();
    private final Map<String, Set<String>> below = new HashMap<>();
    private final Map<String, Set<String>> observers = new HashMap<>();
    private final Set<String> acts;

    ActsOfRoutes() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES.resolve("foretress"))) {
            for (Path file : (Iterable<Path>) files.filter(f -> f.toString().endsWith(".class"))::iterator) {
                read(file);
            }
        }
        classes.values().forEach(this::relate);
        acts = acts();
    }

    private void read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            var node = new ClassNode();
            new ClassReader(in).accept(node, ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
            classes.put(node.name, node);
        }
    }

    private void relate(ClassNode node) {
        Stream.concat(Stream.ofNullable(node.superName), node.interfaces.stream())
            .forEach(above -> below.computeIfAbsent(above, any -> new HashSet<>()).add(node.name));
        for (MethodNode method : node.methods) {
            if (method.visibleParameterAnnotations != null) {
                Type[] takes = Type.getArgumentTypes(method.desc);
                for (int i = 0; i < method.visibleParameterAnnotations.length; i++) {
                    if (method.visibleParameterAnnotations[i] != null && method.visibleParameterAnnotations[i].stream()
                        .anyMatch(a -> a.desc.endsWith("/Observes;"))) {
                        observers.computeIfAbsent(takes[i].getInternalName(), any -> new HashSet<>())
                            .add(key(node.name, method.name, method.desc));
                    }
                }
            }
        }
    }

    /** As the Spanish list knows them, which another test holds against the source files. */
    private static Set<String> acts() throws IOException {
        var spanish = new Properties();
        try (Reader in = Files.newBufferedReader(Path.of("src/main/resources/messages/acts_es.properties"))) {
            spanish.load(in);
        }
        return spanish.stringPropertyNames();
    }

    private static String key(String owner, String name, String descriptor) {
        return owner + "." + name + descriptor;
    }

    /** Every route there is, with what it can leave. */
    Map<String, Set<String>> all() {
        Map<String, Set<String>> all = new TreeMap<>();
        for (ClassNode node : classes.values()) {
            Class<?> type = load(node.name.replace('/', '.'));
            if (type.isAnnotationPresent(jakarta.ws.rs.Path.class)) {
                Arrays.stream(type.getMethods()).filter(method -> Route.verb(method).isPresent())
                    .forEach(method -> all.put(Route.of(type, method), left(method)));
            }
        }
        return all;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, ActsOfRoutes.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private Set<String> left(Method method) {
        Set<String> found = new TreeSet<>();
        Set<String> seen = new HashSet<>();
        Deque<String> waiting = new ArrayDeque<>();
        waiting.add(key(Type.getInternalName(method.getDeclaringClass()), method.getName(),
            Type.getMethodDescriptor(method)));
        while (!waiting.isEmpty()) {
            String next = waiting.poll();
            if (seen.add(next)) {
                body(next).ifPresent(body -> {
                    found.addAll(said(body));
                    called(body, waiting::add);
                });
            }
        }
        return found;
    }

    private java.util.Optional<MethodNode> body(String key) {
        ClassNode owner = classes.get(key.substring(0, key.indexOf('.')));
        String rest = key.substring(key.indexOf('.') + 1);
        return owner == null ? java.util.Optional.empty()
            : owner.methods.stream().filter(method -> (method.name + method.desc).equals(rest)).findFirst();
    }

    private static Stream<AbstractInsnNode> steps(MethodNode body) {
        return Arrays.stream(body.instructions.toArray());
    }

    private static Stream<String> texts(MethodNode body) {
        return steps(body).flatMap(step -> step instanceof LdcInsnNode constant ? Stream.of(constant.cst)
            : step instanceof InvokeDynamicInsnNode joined ? Arrays.stream(joined.bsmArgs) : Stream.empty())
            .filter(String.class::isInstance).map(String.class::cast);
    }

    private Set<String> said(MethodNode body) {
        List<String> texts = texts(body).toList();
        return texts.contains(ACT_OF_THE_CLOCK) ? Set.of()
            : texts.stream().filter(this::isAct).map(text -> text.replace("\u0001", "…")).collect(Collectors.toSet());
    }

    private boolean isAct(String text) {
        String key = text.replaceAll("[^a-z]+", "_");
        return acts.contains(key)
            || text.endsWith(": \u0001") && acts.stream().anyMatch(act -> act.startsWith(key));
    }

    private void called(MethodNode body, Consumer<String> to) {
        steps(body).forEach(step -> {
            if (step instanceof MethodInsnNode call) {
                follow(call.owner, call.name, call.desc, to);
            } else if (step instanceof InvokeDynamicInsnNode made) {
                Arrays.stream(made.bsmArgs).filter(Handle.class::isInstance).map(Handle.class::cast)
                    .forEach(handle -> follow(handle.getOwner(), handle.getName(), handle.getDesc(), to));
            } else if (step.getOpcode() == Opcodes.NEW) {
                observers.getOrDefault(((TypeInsnNode) step).desc, Set.of()).forEach(to);
            }
        });
    }

    private void follow(String owner, String name, String descriptor, Consumer<String> to) {
        if (!owner.startsWith(OURS) || NOT_FOLLOWED.contains(owner)) {
            return;
        }
        for (ClassNode up = classes.get(owner); up != null; up = classes.get(String.valueOf(up.superName))) {
            to.accept(key(up.name, name, descriptor));
        }
        below.getOrDefault(owner, Set.of()).forEach(under -> follow(under, name, descriptor, to));
    }
}
