package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CatchTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.DoWhileLoopTree;
import com.sun.source.tree.EnhancedForLoopTree;
import com.sun.source.tree.ForLoopTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.tree.WhileLoopTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** What the formatter cannot lay out: where braces stand and where a type is left out. Each complaint names file and line. */
@DisplayName("The dialect: braces round every body; var where the line itself names the type")
@Execution(ExecutionMode.CONCURRENT)
class DialectTest {
    private static final List<String> COMPLAINTS = complaints();

    private static List<String> complaints() {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
            Stream<Path> sources = Files.walk(Path.of("src"))) {
            List<Path> java = sources.filter(file -> file.toString().endsWith(".java")).sorted().toList();
            JavacTask task = (JavacTask) compiler.getTask(null, files, said -> {}, List.of("-proc:none"), null,
                files.getJavaFileObjectsFromPaths(java));
            List<String> found = new ArrayList<>();
            for (CompilationUnitTree unit : task.parse()) {
                new Reader(unit, Trees.instance(task), found).scan(unit, null);
            }
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static class Reader extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final Trees trees;
        private final List<String> found;

        Reader(CompilationUnitTree unit, Trees trees, List<String> found) {
            this.unit = unit;
            this.trees = trees;
            this.found = found;
        }

        private void complain(String what, Tree where) {
            long line = unit.getLineMap().getLineNumber(trees.getSourcePositions().getStartPosition(unit, where));
            found.add("%s:%d %s".formatted(unit.getSourceFile().getName(), line, what));
        }

        private void braced(StatementTree body) {
            if (body != null && body.getKind() != Tree.Kind.BLOCK) {
                complain("no braces", body);
            }
        }

        @Override
        public Void visitIf(IfTree tree, Void nothing) {
            braced(tree.getThenStatement());
            if (!(tree.getElseStatement() instanceof IfTree)) {
                braced(tree.getElseStatement());
            }
            return super.visitIf(tree, nothing);
        }

        @Override
        public Void visitForLoop(ForLoopTree tree, Void nothing) {
            braced(tree.getStatement());
            return super.visitForLoop(tree, nothing);
        }

        @Override
        public Void visitEnhancedForLoop(EnhancedForLoopTree tree, Void nothing) {
            braced(tree.getStatement());
            return super.visitEnhancedForLoop(tree, nothing);
        }

        @Override
        public Void visitWhileLoop(WhileLoopTree tree, Void nothing) {
            braced(tree.getStatement());
            return super.visitWhileLoop(tree, nothing);
        }

        @Override
        public Void visitDoWhileLoop(DoWhileLoopTree tree, Void nothing) {
            braced(tree.getStatement());
            return super.visitDoWhileLoop(tree, nothing);
        }

        @Override
        public Void visitVariable(VariableTree tree, Void nothing) {
            Tree parent = getCurrentPath().getParentPath().getLeaf();
            if (isLocal(parent) && isVar(tree) && !(parent instanceof EnhancedForLoopTree) && !saysItsType(tree)) {
                complain("var, and the line does not name the type", tree);
            }
            return super.visitVariable(tree, nothing);
        }

        private static boolean isLocal(Tree parent) {
            return !(parent instanceof ClassTree || parent instanceof MethodTree
                || parent instanceof LambdaExpressionTree || parent instanceof CatchTree);
        }

        /** A parsed variable without a type is a var; the parser leaves the word out. */
        private static boolean isVar(VariableTree tree) {
            return tree.getType() == null;
        }

        private static boolean saysItsType(VariableTree tree) {
            return tree.getInitializer() instanceof NewClassTree made
                && !made.getIdentifier().toString().endsWith("<>");
        }
    }

    @Test
    void bracesAndVarStandOneWay() {
        assertThat(COMPLAINTS).isEmpty();
    }
}
