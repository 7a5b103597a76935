package chock.rulebook;

import chock.record.Fault;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** What stands in a YAML file: texts, lists and mappings, each with the line it begins in. */
sealed interface Outline {
    int line();

    record Text(int line, String text) implements Outline { }

    record Items(int line, List<Outline> items) implements Outline { }

    record Keys(int line, List<Key> keys) implements Outline { }

    record Key(int line, String name, Outline value) { }

    /** The outline of a file, or null after a fault. */
    static Outline of(String file, String text, List<Fault> faults) {
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(0);
        options.setNestingDepthLimit(12);
        try {
            Node root = new Yaml(new SafeConstructor(options)).compose(new StringReader(text));
            if (root != null) {
                return of(root);
            }
            faults.add(new Fault(file, 0, "", "the file is empty", "Write at least one item, or remove the file."));
        } catch (MarkedYAMLException e) {
            int at = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine() + 1;
            faults.add(new Fault(file, at, "", "not readable as YAML: " + e.getProblem(), "Mend the line."));
        } catch (YAMLException e) {
            faults.add(new Fault(file, 0, "", "not readable as YAML: " + e.getMessage(), "Mend the file."));
        }
        return null;
    }

    private static Outline of(Node node) {
        int line = node.getStartMark().getLine() + 1;
        if (node instanceof MappingNode mapping) {
            List<Key> keys = new ArrayList<>();
            for (NodeTuple tuple : mapping.getValue()) {
                String name = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
                keys.add(new Key(tuple.getKeyNode().getStartMark().getLine() + 1, name, of(tuple.getValueNode())));
            }
            return new Keys(line, keys);
        }
        if (node instanceof SequenceNode list) {
            return new Items(line, list.getValue().stream().map(Outline::of).toList());
        }
        return new Text(line, ((ScalarNode) node).getValue());
    }
}
